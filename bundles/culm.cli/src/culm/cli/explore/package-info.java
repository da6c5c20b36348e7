/** Exploring from the command line: tolerances, matters, vary, map, choose. */
package culm.cli.explore;
