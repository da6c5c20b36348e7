package culm.bench.wrong;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;

import culm.bench.Blanks;
import culm.bench.log.Seen;
import culm.bench.log.Tied;
import culm.bench.log.TiedFrom;
import culm.bench.log.TiedHow;
import culm.blank.Blank;
import culm.blank.BlankBuilder;
import culm.blank.Closing;
import culm.blank.ClosingFinder;
import culm.blank.Inputs;

/** Simulated blanks: every input off at random within its give or take, one of them planted far off, read as at a bench. */
final class Makers {
    static final double BENCH = WhatWentWrong.AT_THE_BENCH;
    private static final Map<String, List<String>> WHERE = new LinkedHashMap<>();

    static {
        WHERE.put("tie", List.of(Inputs.TIE_LENGTH));
        WHERE.put("wrapTop", List.of(Inputs.WRAP_TOP));
        WHERE.put("crooked", List.of(Inputs.CROOKED));
        WHERE.put("stapleLength", List.of(Inputs.STAPLE_LENGTH));
        WHERE.put("top", List.of("staple.topWide", "staple.topNarrow"));
        WHERE.put("gouge", List.of("gouge.middle", "gouge.side"));
        WHERE.put("width", java.util.stream.IntStream.range(0, 8).mapToObj(i -> "shape.places[" + i + "].width").toList());
        WHERE.put("swelling", List.of(Inputs.SWELL_WIDTH));
        WHERE.put("compression", List.of(Inputs.COMPRESSION));
    }

    private Makers() {
    }

    static List<String> causes() {
        return List.copyOf(WHERE.keySet());
    }

    /** A careful studio: everything measured. */
    static Blank design() {
        BlankBuilder b = Blanks.check().edit().set(Inputs.COMPRESSION, 0.05).set(Inputs.TIE_LENGTH, 72.6).set(Inputs.FINISHED, 70)
                .tolerance(Inputs.STAPLE_LENGTH, 0.05, true).tolerance("staple.topWide", 0.02, true).tolerance("staple.topNarrow", 0.02, true).tolerance("staple.bottom", 0.02, true)
                .tolerance(Inputs.TUBE, 0.1, true).tolerance("gouge.middle", 0.01, true).tolerance("gouge.side", 0.01, true).tolerance("gouge.sideAt", 0.1, true)
                .tolerance(Inputs.TIE_LENGTH, 0.3, true).tolerance(Inputs.WRAP_TOP, 0.2, true).tolerance(Inputs.THREAD_PITCH, 0.01, true)
                .tolerance(Inputs.SWELL_WIDTH, 0.01, true).tolerance(Inputs.COMPRESSION, 0.02, true);
        for (int i = 0; i < 8; i++) {
            b.tolerance("shape.places[" + i + "].width", 0.03, true);
        }
        return b.build();
    }

    static double tolerance(Blank design, String cause) {
        return cause.equals("crooked") ? WhatWentWrong.CROOKED_TOLERANCE : design.tolerance(WHERE.get(cause).get(0)).plusMinus();
    }

    /** A blank whose planted cause is off by {@code units} of its give or take. */
    static Tied tie(Blank design, String planted, double units, SplittableRandom random) {
        BlankBuilder b = design.edit();
        for (String cause : WHERE.keySet()) {
            double tolerance = tolerance(design, cause);
            double off = cause.equals(planted) ? units * tolerance : tolerance * either(random);
            WHERE.get(cause).forEach(path -> b.set(path, design.value(path).orElse(0) + off));
        }
        Blank real = b.build();
        double sigma = real.number(Inputs.CROOKED);
        Seen seen = new Seen(OptionalDouble.of(real.number(Inputs.STAPLE_LENGTH) + 0.05 * either(random)), OptionalDouble.of(real.number(Inputs.TIE_LENGTH) + BENCH * either(random)),
                OptionalDouble.of(real.number(Inputs.WRAP_TOP) + BENCH * either(random)), OptionalDouble.of(read(real, sigma, random)), OptionalDouble.of(read(real, -sigma, random)),
                Optional.empty(), Optional.empty(), Optional.empty(), OptionalDouble.empty(), Optional.empty());
        return new Tied("1", Optional.empty(), "", "", TiedFrom.NOTHING, TiedHow.NOTHING, seen, "", 0);
    }

    /** Turns read on one side, half a turn either way; sides that are open at the staple's top are noted as one turn above the wrap. */
    private static double read(Blank real, double extra, SplittableRandom random) {
        Closing closing = ClosingFinder.find(real, extra);
        return closing.at().isEmpty() ? -1 : (real.number(Inputs.WRAP_TOP) - closing.at().getAsDouble()) / real.number(Inputs.THREAD_PITCH) + 0.5 * either(random);
    }

    static double either(SplittableRandom random) {
        return 2 * random.nextDouble() - 1;
    }
}
