package culm.cli.explore;

import java.util.ArrayList;
import java.util.List;

import culm.blank.Blank;
import culm.cli.CommandException;
import culm.explore.Axis;
import culm.explore.Free;
import culm.explore.Varied;
import culm.model.problem.FileProblemException;

/** Reads axes: {@code INPUT=a,b,c}, {@code INPUT=FROM:TO:COUNT}, {@code INPUT=FROM:TO:/STEP}, {@code staple=DESIGN,DESIGN}. */
final class Axes {
    private static final List<String> PARTS = List.of("staple", "gouge", "shape");
    private static final int MOST = 10_000_000;

    private Axes() {
    }

    static List<Axis> of(Question question) throws CommandException, FileProblemException {
        List<Axis> axes = new ArrayList<>();
        for (Question.Assignment a : question.assignments) {
            axes.add(PARTS.contains(a.input()) ? parts(question, a) : numbers(question, a));
        }
        return axes;
    }

    /** What may be chosen: a range without a step is open to every value in it. */
    static List<Free> free(Question question) throws CommandException, FileProblemException {
        List<Free> free = new ArrayList<>();
        for (Question.Assignment a : question.assignments) {
            String[] ends = a.value().split(":", -1);
            if (!PARTS.contains(a.input()) && ends.length == 2) {
                String path = question.number(a.input());
                free.add(Free.between(path, Varied.label(question.blank(), path), Question.real(ends[0], path), Question.real(ends[1], path)));
            } else {
                free.add(Free.among(PARTS.contains(a.input()) ? parts(question, a) : numbers(question, a)));
            }
        }
        return free;
    }

    static Axis.Numbers numbers(Question question, Question.Assignment a) throws CommandException {
        String path = question.number(a.input());
        String label = Varied.label(question.blank(), path);
        String[] range = a.value().split(":", -1);
        try {
            if (range.length == 3) {
                double from = Question.real(range[0], path);
                double to = Question.real(range[1], path);
                if (range[2].startsWith("/")) {
                    return Axis.Numbers.stepped(path, label, from, to, Question.real(range[2].substring(1), path));
                }
                double count = Question.real(range[2], path);
                if (count != Math.rint(count) || count < 1 || count > MOST) {
                    throw CommandException.usage(path + ": '" + range[2] + "' is no number of values; a step is written /" + range[2]);
                }
                return Axis.Numbers.spaced(path, label, from, to, (int) count);
            }
            if (range.length == 1) {
                String[] words = a.value().split(",");
                double[] values = new double[words.length];
                for (int i = 0; i < words.length; i++) {
                    values[i] = Question.real(words[i], path);
                }
                return new Axis.Numbers(path, label, values);
            }
        } catch (IllegalArgumentException e) {
            throw CommandException.usage(e.getMessage());
        }
        throw CommandException.usage(path + ": '" + a.value() + "' is neither a list a,b,c nor FROM:TO:COUNT nor FROM:TO:/STEP");
    }

    private static Axis parts(Question question, Question.Assignment a) throws CommandException, FileProblemException {
        List<Axis.Choice> choices = new ArrayList<>();
        for (String file : a.value().split(",")) {
            Blank other = question.readNamed(file).blank();
            String name = file.replaceAll(".*/", "").replaceAll("\\.reed$", "");
            choices.add(Axis.Choice.of(name, a.input(), other));
        }
        return new Axis.Parts(a.input(), a.input(), choices);
    }
}
