/** What a log teaches the model: one length per maker, shape and staple batch, with how well it is known, and what has changed. */
package culm.bench.learn;
