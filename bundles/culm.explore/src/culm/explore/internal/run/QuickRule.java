package culm.explore.internal.run;

/** One rule judged on a block's columns. */
interface QuickRule {
    /** Sets the rule's bit in every lane that fails it. */
    void judge(int[] failed, int n);
}
