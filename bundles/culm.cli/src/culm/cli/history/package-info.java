/** A studio's history on the command line. */
package culm.cli.history;
