/** What changes if: a design beside a blank that worked, or beside itself as saved, with changes that are only tried. */
package culm.workbench.internal.changes;
