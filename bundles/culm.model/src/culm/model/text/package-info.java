/** Numbers, ids and rows as text. */
package culm.model.text;
