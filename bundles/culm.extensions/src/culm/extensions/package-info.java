/** The extension points and what was contributed to them. */
package culm.extensions;
