/** Every change of a design or a part as an EMF command: done, undone and done again, each with a label in the bench's words. */
package culm.design.edit;
