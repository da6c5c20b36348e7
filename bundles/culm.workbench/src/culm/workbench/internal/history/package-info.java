/** A studio's history in the window: versions, what changed, going back, sending and receiving. */
package culm.workbench.internal.history;
