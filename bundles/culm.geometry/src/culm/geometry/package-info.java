/** What a blank is made of, computed. */
package culm.geometry;
