/** What turns an assessed blank into the bytes of a file. */
package culm.blank.export;
