/** The headless application. */
package culm.cli;
