package culm.bench.wrong;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import culm.blank.Blank;
import culm.blank.Fit;
import culm.blank.Input;
import culm.blank.Inputs;
import culm.geometry.profile.Quantity;
import culm.geometry.words.Told;

/**
 * Everything about a blank that may have been otherwise than noted. Numbers that are measured with one grip of the caliper, or that a
 * wrong tool moves together, go together: all widths, both thicknesses, both axes of the top.
 */
final class Candidates {
    private final Blank blank;
    private final Map<String, Candidate> found = new LinkedHashMap<>();

    private Candidates(Blank blank) {
        this.blank = blank;
    }

    /** @param tieTolerance give or take of the tie length on this blank; @param wrapTolerance that of the top of the wrap, mm */
    static List<Candidate> of(Blank blank, double tieTolerance, double wrapTolerance) {
        Candidates all = new Candidates(blank);
        all.add(new Candidate("tie", "tie length", "longer", "shorter", "mm", tieTolerance, List.of(Inputs.TIE_LENGTH), "Measure the tie again, bottom of the staple to the fold."));
        all.add(new Candidate(Candidate.WRAP_TOP, "top of the wrap", "higher", "lower", "mm", wrapTolerance, List.of(), "Measure from the bottom of the staple to the last turn."));
        all.add(new Candidate(Candidate.COUNT, "count of the turns", "more", "fewer", "turns", Fit.HALF_A_TURN, List.of(), "Count the turns again on the blank, under a loupe."));
        for (Input input : blank.inputs()) {
            all.add(input);
        }
        return List.copyOf(all.found.values());
    }

    private void add(Candidate candidate) {
        if (candidate.tolerance() > 0) {
            found.put(candidate.id(), candidate);
        }
    }

    private void add(Input input) {
        String path = input.path();
        double tolerance = input.tolerance().plusMinus();
        switch (path) {
            case Inputs.THREAD_PITCH -> add(new Candidate(Candidate.PITCH, "height of one turn", "more", "less", "mm", tolerance, List.of(), "Measure ten turns side by side."));
            case Inputs.STAPLE_LENGTH -> join("stapleLength", "staple length", "longer", "shorter", "mm", tolerance, path, "Measure the staple again, bottom to top.");
            case Inputs.TUBE -> join("tube", "tube", "wider", "narrower", "mm", tolerance, path, "Lay the cane against a gauge of the tube's diameter.");
            case Inputs.SWELL_WIDTH -> join("swelling", "swelling of width", "more", "less", "", tolerance, path, "Measure one piece dry and wet; was it soaked as long as usual?");
            case Inputs.COMPRESSION -> join("compression", "thickness lost under the thread", "more", "less", "", tolerance, path,
                    "Was the thread pulled as tight as usual? Measure the outside width after tying.");
            case Inputs.SWELL_THICKNESS -> join("swellThickness", "swelling of thickness", "more", "less", "", tolerance, path, "Measure one piece dry and wet.");
            default -> profile(input, path, tolerance);
        }
    }

    private void profile(Input input, String path, double tolerance) {
        String id = input.parameter().id();
        boolean length = input.parameter().quantity() == Quantity.LENGTH;
        if (path.startsWith("staple.") && !path.equals(Inputs.WALL) && !path.equals(Inputs.CORK_TOP)) {
            if (id.equals("topWide") || id.equals("topNarrow") || id.equals("wide") || id.equals("narrow")) {
                join("top", "top of the staple", "larger", "smaller", "mm", tolerance, path, "Measure the top again on the mandrel, wide and narrow.");
            } else if (length && !id.equals("height") && !id.startsWith("check")) {
                join("staple." + id, "staple, " + input.parameter().label(), "larger", "smaller", "mm", tolerance, path, "Measure the staple's " + input.parameter().label() + " again.");
            }
        } else if (path.startsWith("gouge.") || path.startsWith("gougeEnd.")) {
            if (id.equals("middle") || id.equals("side") || id.equals("thickness")) {
                join("gouge", "thickness of the cane", "thicker", "thinner", "mm", tolerance, path, "Measure the thickness of the same cane, near the ends of the piece as well.");
            }
        } else if (path.startsWith("shape.") && length && !id.equals("fromFold") && !id.equals("throatAt") && !path.equals(Inputs.FOLDED_LENGTH)
                && !path.equals(Inputs.EARS_WIDTH) && !path.equals(Inputs.EARS_LENGTH)) {
            join("width", "width of the cane", "wider", "narrower", "mm", tolerance, path, "Measure the cane's width " + Told.length(26, 0) + " from the fold, on a piece of the same batch.");
        } else if (path.startsWith("inside.") && id.equals("width")) {
            join("inside", "inside width of the cane", "wider", "narrower", "mm", tolerance, path, "Measure the inside width again.");
        }
    }

    /** Paths under one id change together; the largest of their tolerances counts. */
    private void join(String id, String words, String more, String less, String unit, double tolerance, String path, String check) {
        Candidate before = found.get(id);
        List<String> paths = new ArrayList<>(before == null ? List.of() : before.paths());
        paths.add(path);
        add(new Candidate(id, words, more, less, unit, Math.max(tolerance, before == null ? 0 : before.tolerance()), List.copyOf(paths), check));
    }
}
