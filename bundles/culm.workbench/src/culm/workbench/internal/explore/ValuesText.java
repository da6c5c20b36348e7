package culm.workbench.internal.explore;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import culm.blank.Input;
import culm.explore.Axis;
import culm.figures.Ticks;
import culm.workbench.internal.numbers.NumberForm;

/** Values as they are typed: {@code 70 to 75 by 0.5}, {@code 70 to 75 in 11}, {@code 70; 71.5; 73}, and back. */
final class ValuesText {
    private static final Pattern RANGE = Pattern.compile("(.+?)\\s+to\\s+(.+?)(?:\\s+(by|in)\\s+(.+))?", Pattern.CASE_INSENSITIVE);
    private static final int MOST = 1_000_000;
    private static final int STEPS = 4;
    private static final double FINEST = 0.01;

    private ValuesText() {
    }

    /**
     * Reads values.
     *
     * @param path the input's path
     * @param label its words
     * @param form how its numbers are typed
     * @param typed the text
     * @return the values; a range without steps goes in hundredths
     * @throws IllegalArgumentException when it says no values; the message is a whole sentence
     */
    static Axis.Numbers read(String path, String label, NumberForm form, String typed) {
        Matcher range = RANGE.matcher(typed.strip());
        if (range.matches()) {
            double from = form.parse(range.group(1));
            double to = form.parse(range.group(2));
            if ("in".equalsIgnoreCase(range.group(3))) {
                return Axis.Numbers.spaced(path, label, from, to, count(range.group(4)));
            }
            double step = range.group(4) == null ? form.parse(form.text(FINEST)) : Math.abs(form.parse(range.group(4)));
            if (!(step > 0) || Math.abs(to - from) / step > MOST) {
                throw new IllegalArgumentException("\"" + typed.strip() + "\" has no steps that can be made.");
            }
            return Axis.Numbers.stepped(path, label, from, to, to < from ? -step : step);
        }
        double[] values = Arrays.stream(typed.split(";|\\s+(?=[\\d.,−-])")).filter(v -> !v.isBlank()).mapToDouble(form::parse).toArray();
        if (values.length == 0) {
            throw new IllegalArgumentException("Values are needed, such as 70 to 75 by 0.5, or 70; 71.5; 73.");
        }
        return new Axis.Numbers(path, label, values);
    }

    /** The same values in another unit, with its sign where there was one. What says no values stays as it is. */
    static String rewritten(NumberForm form, NumberForm other, String typed) {
        boolean signed = !form.sign().isEmpty() && typed.strip().endsWith(form.sign());
        String bare = bare(form, other, typed);
        return signed && !bare.equals(typed) ? bare + "\u2009" + other.sign() : bare;
    }

    private static String bare(NumberForm form, NumberForm other, String typed) {
        try {
            Matcher range = RANGE.matcher(typed.strip());
            if (!range.matches()) {
                return Arrays.stream(list(form, typed)).mapToObj(other::bare).collect(Collectors.joining("; "));
            }
            String steps = range.group(4) == null ? "" : " " + range.group(3) + " " + ("in".equalsIgnoreCase(range.group(3)) ? range.group(4) : other.bare(form.parse(range.group(4))));
            return other.bare(form.parse(range.group(1))) + " to " + other.bare(form.parse(range.group(2))) + steps;
        } catch (NumberFormatException e) {
            return typed; // said when it is read
        }
    }

    private static int count(String typed) {
        String digits = typed.strip();
        if (!digits.matches("\\d{1,7}") || Integer.parseInt(digits) < 1 || Integer.parseInt(digits) > MOST) {
            throw new IllegalArgumentException("\"" + digits + "\" is no number of values.");
        }
        return Integer.parseInt(digits);
    }

    /** Values around an input's own, some give or take wide, as far as its range goes. */
    static String around(Input input, NumberForm form) {
        double step = Math.max(FINEST, Ticks.niceStep(input.tolerance().plusMinus() * 0.999));
        double from = Math.max(input.parameter().min(), Math.rint(input.value() / step - STEPS) * step);
        double to = Math.min(input.parameter().max(), Math.rint(input.value() / step + STEPS) * step);
        return range(form, from, to, step);
    }

    static String range(NumberForm form, double from, double to, double step) {
        return form.bare(tidy(from)) + " to " + form.bare(tidy(to)) + " by " + form.bare(tidy(step));
    }

    private static double tidy(double value) {
        return Math.rint(value * 1e9) / 1e9;
    }

    /** Numbers of a list, as {@link #read} takes them. @throws IllegalArgumentException when one is none */
    static double[] list(NumberForm form, String typed) {
        List<Double> all = new ArrayList<>();
        for (String word : typed.split(";|\\s+(?=[\\d.,−-])")) {
            if (!word.isBlank()) {
                all.add(form.parse(word));
            }
        }
        return all.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
