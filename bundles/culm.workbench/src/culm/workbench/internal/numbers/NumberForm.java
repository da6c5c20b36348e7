package culm.workbench.internal.numbers;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import culm.geometry.profile.Parameter;
import culm.geometry.profile.Quantity;
import culm.geometry.words.LengthText;
import culm.model.text.Numbers;

/**
 * How one number is shown and typed.
 *
 * @param quantity what it measures
 * @param unit in what lengths are shown
 * @param decimals decimals that its give or take allows, in mm
 */
public record NumberForm(Quantity quantity, LengthUnit unit, int decimals) {
    private static final int MOST_DECIMALS = 4;
    private static final double PERCENT = 100;
    private static final double ROUND = 1e9;
    private static final double NOISE = 1e6;
    private static final Pattern TYPED = Pattern.compile("(.*?)\\s*(mm|cm|in|inch|\"|thou|th|mil|%|tex|kg/m³|turns?)?",
            Pattern.CASE_INSENSITIVE);

    /**
     * The form that suits a give or take: no more digits than the caliper has.
     *
     * @param quantity what is measured
     * @param unit in what lengths are shown
     * @param tolerance the give or take in the quantity's own unit; 0 or NaN when there is none
     * @return the form
     */
    public static NumberForm of(Quantity quantity, LengthUnit unit, double tolerance) {
        int decimals = switch (quantity) {
            case LENGTH -> tolerance >= (unit == LengthUnit.THOU ? LengthUnit.THOU.mm() : 0.1) ? 1 : 2;
            case SHARE -> 0;
            default -> 0;
        };
        return new NumberForm(quantity, unit, decimals);
    }

    /**
     * A number with its unit. Digits that someone gave are never hidden.
     *
     * @param value the number in the quantity's own unit
     * @return its text
     */
    public String text(double value) {
        String sign = sign();
        return sign.isEmpty() ? bare(value) : bare(value) + "\u2009" + sign;
    }

    /**
     * A number without its unit.
     *
     * @param value the number in the quantity's own unit
     * @return its text
     */
    public String bare(double value) {
        double here = toShown(value);
        return fixed(here, thou() ? fewest() : Math.max(fewest(), given(here)));
    }

    /**
     * A computed number with its unit, rounded to this form's decimals.
     *
     * @param value the number in the quantity's own unit
     * @return its text
     */
    public String computed(double value) {
        String sign = sign();
        return sign.isEmpty() ? rounded(value) : rounded(value) + "\u2009" + sign;
    }

    /** {@return a computed number without its unit, rounded to this form's decimals} @param value the number in the quantity's own unit */
    public String rounded(double value) {
        return fixed(toShown(value), fewest());
    }

    private static String fixed(double here, int digits) {
        return Numbers.fixed(here, digits).replace('-', '\u2212');
    }

    private boolean thou() {
        return quantity == Quantity.LENGTH && unit == LengthUnit.THOU;
    }

    private int fewest() {
        return Math.max(0, thou() ? decimals - unit.fewerDigits() : decimals);
    }

    private static int given(double value) {
        int digits = 0;
        double scaled = Math.abs(value);
        while (digits < MOST_DECIMALS && Math.abs(scaled - Math.rint(scaled)) > 1e-6) {
            digits++;
            scaled *= 10;
        }
        return digits;
    }

    /** {@return what stands behind the number, may be empty} */
    public String sign() {
        return switch (quantity) {
            case LENGTH -> unit.sign();
            case SHARE -> "%";
            default -> quantity.unit();
        };
    }

    /**
     * Reads what a person typed: point or comma, with or without a unit; without one it is this form's.
     *
     * @param typed the text
     * @return the number in the quantity's own unit
     * @throws NumberFormatException when it is none; its message is a whole sentence
     */
    public double parse(String typed) {
        Matcher parts = TYPED.matcher(typed.strip().replace('\u2009', ' ').replace('\u202f', ' '));
        if (!parts.matches()) {
            throw new NumberFormatException("\"" + typed.strip() + "\" is not a number.");
        }
        double number;
        try {
            number = Numbers.parseTyped(parts.group(1));
        } catch (NumberFormatException e) {
            throw new NumberFormatException("\"" + parts.group(1).strip() + "\" " + e.getMessage() + ".");
        }
        double factor = factor(parts.group(2));
        return Math.rint(number * factor * ROUND) / ROUND;
    }

    /** {@return why a number cannot be taken, one sentence, lengths in this form's unit; empty when it can} @param described what is asked for */
    public Optional<String> refuse(Parameter described, double value) {
        return described.refusal(value).map(unit.drawn()::told);
    }

    /** {@return what a number is and what it does, lengths in this form's unit} @param described the number */
    public String help(Parameter described) {
        return unit.drawn().told(described.toldHelp());
    }

    /** {@return a number as someone gave it, without its unit: every digit that it has, in thousandths of an inch as many as can be measured} */
    public String asGiven(double value) {
        return quantity == Quantity.LENGTH ? unit.drawn().number(value, LengthText.AS_GIVEN) : Numbers.format(value);
    }

    /** {@return two ends with their unit} @param between the word between them, with its blanks */
    public String range(double least, double most, String between) {
        return asGiven(least) + between + asGiven(most) + (sign().isEmpty() ? "" : " " + sign());
    }

    /**
     * How far an arrow key goes: a tenth of a mm or one thousandth of an inch, one in a thousand of a share, one of what is counted. A tenth of that for
     * lengths and shares with Shift, but nothing that would not be seen.
     *
     * @param hundredths what a field says of the key: 10 or 1, up or down
     * @return in the quantity's own unit
     */
    public double step(int hundredths) {
        return switch (quantity) {
            case LENGTH -> unit == LengthUnit.MM ? hundredths / 100.0
                    : Math.signum(hundredths) * Math.max(Math.abs(hundredths) / 10.0, Math.pow(10, -Math.max(0, decimals - unit.fewerDigits()))) * unit.mm();
            case SHARE -> hundredths / 1000.0;
            default -> Math.signum(hundredths);
        };
    }

    /** {@return a number that an arrow key has moved, without the noise of adding} @param hundredths as {@link #step} takes it */
    public double stepped(double now, int hundredths) {
        return Math.rint((now + step(hundredths)) * NOISE) / NOISE;
    }

    private double factor(String given) {
        String sign = given == null ? sign() : given.toLowerCase(Locale.ROOT);
        if (quantity == Quantity.SHARE) {
            return requireUnit(given, sign, "%") / PERCENT;
        }
        if (quantity != Quantity.LENGTH) {
            String own = quantity == Quantity.COUNT ? sign.startsWith("turn") ? sign : "" : quantity.unit();
            return requireUnit(given, sign, own);
        }
        return switch (sign) {
            case "mm" -> 1;
            case "cm" -> 10;
            case "in", "inch", "\"" -> 1000 * LengthUnit.THOU.mm();
            case "thou", "th", "mil" -> LengthUnit.THOU.mm();
            default -> throw new NumberFormatException(sign + " is not a length.");
        };
    }

    private static double requireUnit(String given, String sign, String own) {
        if (given != null && !sign.equals(own)) {
            throw new NumberFormatException(given + " is not its unit.");
        }
        return 1;
    }

    private double toShown(double value) {
        return switch (quantity) {
            case LENGTH -> value / unit.mm();
            case SHARE -> value * PERCENT;
            default -> value;
        };
    }
}
