/** Give or take: distributions of inputs, seeded draws, their propagation, and stacks of lengths. */
package culm.blank.chance;
