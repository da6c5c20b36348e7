/** From text to objects and back, driven by the model's own description. */
package culm.model.internal.files;
