/** The reference table of every described number. */
package culm.cli.parameters;
