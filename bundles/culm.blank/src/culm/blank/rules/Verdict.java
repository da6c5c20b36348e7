package culm.blank.rules;

import java.util.List;

import culm.blank.Assessment;
import culm.blank.Band;
import culm.geometry.words.LengthText;
import culm.geometry.words.Told;

/**
 * The one sentence under a blank's name: in turns, with its give or take.
 *
 * @param sign     how it stands
 * @param told the sentence, lower case at the start, without a full stop, its lengths as {@link Say#along} writes them
 */
public record Verdict(Sign sign, String told) {
    /** How a blank stands. */
    public enum Sign {
        /** Nothing wrong, and the give or take stays within the limits. */
        FITS("fits"),
        /** It may fit; the findings say what stands against it. */
        MAY_FIT("may fit"),
        /** It will not work. */
        DOES_NOT("does not work");

        private final String word;

        Sign(String word) {
            this.word = word;
        }

        /** The word that stands beside the sign. */
        public String word() {
            return word;
        }
    }

    /** The sentence, lower case at the start, without a full stop, lengths in mm. */
    public String sentence() {
        return Told.mm(told);
    }

    /** The same with its lengths in some unit. */
    public Verdict in(LengthText unit) {
        return new Verdict(sign, Told.in(told, unit));
    }

    /** The verdict on an assessment with its findings. */
    public static Verdict of(Assessment a, List<Finding> findings) {
        return new Verdict(sign(findings), sentence(a) + basis(a) + worst(a, findings) + open(a));
    }

    /** The same without the error that is named behind the turns, for where the findings stand below it. */
    public static Verdict brief(Assessment a, List<Finding> findings) {
        return new Verdict(sign(findings), sentence(a) + basis(a) + open(a));
    }

    private static Sign sign(List<Finding> findings) {
        if (findings.stream().anyMatch(f -> f.severity() == Severity.ERROR)) {
            return Sign.DOES_NOT;
        }
        return findings.stream().anyMatch(f -> f.severity() == Severity.WARNING) ? Sign.MAY_FIT : Sign.FITS;
    }

    private static String sentence(Assessment a) {
        if (a.turnsLeft().isPresent()) {
            double turns = a.turnsLeft().getAsDouble();
            String take = a.turnsBand().map(b -> ", give or take " + Say.tenth(b.half())).orElse("");
            if (turns < 0) {
                return "sides close " + Say.turns(-turns) + " above the wrap" + take;
            }
            return "sides close with " + Say.turns(turns) + " left" + take;
        }
        if (a.openAtStapleTop().isPresent()) {
            return "sides never close: open by " + Say.across(a.openAtStapleTop().getAsDouble()) + " at the staple's top"
                    + a.openAtStapleTopBand().map(b -> ", give or take " + Say.across(b.half()) + (b.low() <= 0 ? ", within which they may close" : "")).orElse("");
        }
        return "where the sides close cannot be told";
    }

    /** Behind all that belongs to the turns. */
    private static String open(Assessment a) {
        boolean may = a.turnsLeft().isPresent() && a.turnsLeft().getAsDouble() >= 0 && a.turnsBand().filter(Band::open).isPresent();
        return may ? "; they may not close at all" : "";
    }

    private static String basis(Assessment a) {
        if (!a.fitted() || a.turnsLeft().isEmpty()) {
            return "";
        }
        String learned = a.blank().fit().orElseThrow().learned();
        return learned.isEmpty() ? ", from a blank that worked" : ", " + learned.replaceFirst(":.*", "");
    }

    /** An error that the turns do not show is named, so that no good number hides it. */
    private static String worst(Assessment a, List<Finding> findings) {
        return findings.stream().filter(f -> f.severity() == Severity.ERROR && !f.rule().equals("sidesOpen") && !f.rule().equals("turnsLeft"))
                .findFirst().map(f -> (a.turnsLeft().isPresent() ? "; but " : a.openAtStapleTop().isPresent() ? "; also " : ": ") + lower(f.toldText())).orElse("");
    }

    private static String lower(String text) {
        String head = Character.toLowerCase(text.charAt(0)) + text.substring(1);
        return head.endsWith(".") ? head.substring(0, head.length() - 1) : head;
    }
}
