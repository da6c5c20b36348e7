/** The extension points and their readers. */
package culm.extensions;
