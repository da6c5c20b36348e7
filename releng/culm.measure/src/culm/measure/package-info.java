/** How long the window takes to open, beside a bare one, and to show an edit. Not shipped. */
package culm.measure;
