/** The reed log as it is computed: blanks as they were tied and seen, planned against measured, shares by person, batch and shape. */
package culm.bench.log;
