package culm.design.compare;

import culm.model.text.Numbers;

/** In what unit a comparison writes lengths. */
public interface LengthWords {
    /** Millimetres, with every digit that was given. */
    LengthWords MM = new LengthWords() {
        @Override
        public String number(double mm) {
            return Numbers.format(mm);
        }

        @Override
        public String sign() {
            return "mm";
        }
    };

    /** A length without its unit. @param mm the length */
    String number(double mm);

    /** What stands behind it. */
    String sign();
}
