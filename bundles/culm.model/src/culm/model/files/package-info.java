/** Reading, writing and migrating the files of a studio. */
package culm.model.files;
