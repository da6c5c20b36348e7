/** How numbers are shown and typed: units, digits. */
package culm.workbench.internal.numbers;
