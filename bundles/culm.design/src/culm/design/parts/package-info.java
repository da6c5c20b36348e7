/** Work on a studio's parts: who uses one, replacing one in many designs, duplicates. */
package culm.design.parts;
