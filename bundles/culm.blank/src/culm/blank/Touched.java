package culm.blank;

/**
 * Which of the two lengths at the seam an input can change, for slopes and responses: the half-width needed, or the one the cane has, at a height that is
 * kept below the staple's top.
 */
record Touched(boolean needed, boolean given) {
    /** What moving the input at a path can change. */
    static Touched by(Blank blank, String path) {
        String part = path.substring(0, path.indexOf('.'));
        boolean along = blank.gougeEnd().isPresent(); // the gouge is another one at another distance from the fold
        boolean cane = part.equals("shape") || part.equals("inside") || part.equals("fit");
        boolean needed = !(cane && !(along && path.equals(Inputs.FOLDED_LENGTH)) || path.equals(Inputs.TIE_LENGTH) && !along);
        boolean given = !part.equals("staple") || path.equals(Inputs.STAPLE_LENGTH);
        return new Touched(needed, given);
    }
}
