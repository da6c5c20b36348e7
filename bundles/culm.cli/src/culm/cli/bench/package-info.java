/** The bench on the command line: batches, cards, templates, the log and what it teaches. */
package culm.cli.bench;
