package culm.blank;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.OptionalDouble;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

import culm.geometry.gouge.Concentric;
import culm.geometry.gouge.GougeSection;
import culm.geometry.profile.Values;
import culm.geometry.section.Ellipse;
import culm.geometry.shape.EdgeKind;
import culm.geometry.shape.WidthMeasure;
import culm.geometry.staple.RolledSheet;

/** The check values about one whole blank. */
class WholeBlankTest {
    @ParameterizedTest
    @CsvFileSource(files = "test/values/whole-blank.csv", numLinesToSkip = 1)
    void wholeBlank(String changed, String result, String expected, double tolerance, String source) {
        OptionalDouble found = result(blank(changed == null ? "" : changed), result);
        if (expected.equals("never")) {
            assertEquals(OptionalDouble.empty(), found, source);
        } else {
            assertEquals(Double.parseDouble(expected), found.orElseThrow(), tolerance, source);
        }
    }

    private static Blank blank(String changed) {
        BlankBuilder b = Sample.builder();
        for (String change : changed.split(";")) {
            if (change.startsWith("type=")) {
                retype(b, change.substring(5));
            } else if (!change.isEmpty()) {
                b.set(change.substring(0, change.indexOf('=')), Double.parseDouble(change.substring(change.indexOf('=') + 1)));
            }
        }
        return b.build();
    }

    private static void retype(BlankBuilder b, String type) {
        Blank plain = Sample.blank();
        switch (type) {
            case "rolled" -> b.staple(new Profile<>(new RolledSheet(), plain.staple().values()));
            case "concentric" -> b.gouge(new Profile<>(new Concentric(), Values.NONE.with("middle", 0.58)));
            case "radial" -> b.cut(new Cut(WidthMeasure.CHORD, EdgeKind.RADIAL, true, true));
            case "fitted" -> b.fit(Fit.to(plain, (46.5 - 45.885) / 0.41, Fit.HALF_A_TURN));
            default -> throw new IllegalArgumentException(type);
        }
    }

    private static OptionalDouble result(Blank blank, String result) {
        if (result.equals("closing")) {
            return ClosingFinder.find(blank).at();
        }
        Assessment a = Assessor.assess(blank);
        String[] words = result.split(" ");
        return switch (words[0]) {
            case "openAtTop" -> a.openAtStapleTop();
            case "needed" -> OptionalDouble.of(new Seam(blank).needed(Double.parseDouble(words[1])));
            case "outerPerimeter" -> OptionalDouble.of(new Seam(blank).outerPerimeter(Double.parseDouble(words[1])));
            case "boreVolume" -> a.boreVolume();
            case "turnsUp" -> OptionalDouble.of(a.thread().orElseThrow().turnsUp());
            case "turnsDown" -> OptionalDouble.of(a.thread().orElseThrow().turnsDown());
            case "threadLength" -> OptionalDouble.of(a.thread().orElseThrow().length());
            case "delta" -> OptionalDouble.of(blank.number(Inputs.DELTA));
            default -> throw new IllegalArgumentException(result);
        };
    }

    @ParameterizedTest
    @CsvFileSource(files = "test/values/half-width-needed.csv", numLinesToSkip = 1)
    void halfWidthNeededForConstantThickness(double a, double b, double thickness, double doubled, double tolerance, String source) {
        GougeSection even = new Concentric().section(Values.NONE.with("middle", thickness), 5.25);
        double phi = new CaneBend(new Ellipse(a, b), even, 5.25, 1, 1).seam();
        assertEquals(doubled, 2 * (5.25 * phi - even.integral(phi) / 2), tolerance, source);
    }
}
