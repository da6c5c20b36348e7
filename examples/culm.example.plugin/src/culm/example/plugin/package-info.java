/** An example of a plug-in: one kind of staple, one kind of shape, one rule. All invented. */
package culm.example.plugin;
