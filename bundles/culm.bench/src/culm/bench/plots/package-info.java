/** What exploring found, as drawings for the screen, the command line and paper. */
package culm.bench.plots;
