/** Small trees of XML: read within limits, written so that a person can read them. */
package culm.model.xml;
