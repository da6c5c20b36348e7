/**
 * A studio's history as a git repository: what changed in words of the trade, going back, sending and receiving. Optional: without a call of
 * {@link culm.history.StudioHistory#begin} no repository is made. No password is ever stored.
 */
package culm.history;
