package culm.explore;

import java.util.Arrays;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

import culm.blank.Blank;
import culm.blank.BlankBuilder;
import culm.blank.Cut;

/** One thing that variants differ in: a number, or a choice among parts. */
public sealed interface Axis {
    /** A path, or a name for a choice of parts; the heading of its column. */
    String id();

    /** The bench's word for it. */
    String label();

    /** How many values it takes; at least one. */
    int size();

    /** A value as text, for tables. */
    String text(int index);

    /** A number at a path (or {@link Varied#WIDTH}), with the values that it takes, ascending or not. */
    record Numbers(String id, String label, double[] values) implements Axis {
        /** @throws IllegalArgumentException without a value or with one that is not a number */
        public Numbers {
            values = values.clone();
            if (values.length == 0 || !Arrays.stream(values).allMatch(Double::isFinite)) {
                throw new IllegalArgumentException(id + " needs at least one value, each a number.");
            }
        }

        /** Evenly spaced values, both ends included. @param count at least 1; with 1 only {@code from} */
        public static Numbers spaced(String path, String label, double from, double to, int count) {
            return new Numbers(path, label, IntStream.range(0, count).mapToDouble(i -> count == 1 ? from : tidy(from + (to - from) * i / (count - 1))).toArray());
        }

        /** Steps from one end, as far as they reach the other within a thousandth of a step. @throws IllegalArgumentException for a step that leads nowhere */
        public static Numbers stepped(String path, String label, double from, double to, double step) {
            if (!(step != 0 && (to - from) / step >= 0 && (to - from) / step < 1e7)) {
                throw new IllegalArgumentException(path + ": steps of " + step + " do not lead from " + from + " to " + to + ".");
            }
            int count = (int) Math.floor((to - from) / step + 1e-3) + 1;
            return new Numbers(path, label, IntStream.range(0, count).mapToDouble(i -> tidy(from + i * step)).toArray());
        }

        /** Without the last binary digits' dust: 0.1 + 2 * 0.1 is 0.3. */
        private static double tidy(double value) {
            return Math.rint(value * 1e9) / 1e9;
        }

        @Override
        public int size() {
            return values.length;
        }

        @Override
        public String text(int index) {
            return Double.toString(values[index]);
        }

        double least() {
            return DoubleStream.of(values).min().orElseThrow();
        }

        double most() {
            return DoubleStream.of(values).max().orElseThrow();
        }
    }

    /** One of several parts, e.g. these three shapes. */
    record Parts(String id, String label, List<Choice> choices) implements Axis {
        public Parts {
            choices = List.copyOf(choices);
            if (choices.isEmpty()) {
                throw new IllegalArgumentException(id + " needs at least one part.");
            }
        }

        @Override
        public int size() {
            return choices.size();
        }

        @Override
        public String text(int index) {
            return choices.get(index).name();
        }
    }

    /** A part by name, and what it makes of a blank. */
    record Choice(String name, UnaryOperator<Blank> into) {
        /** A part of another blank, with all its numbers. @param part staple, gouge, shape or thread */
        public static Choice of(String name, String part, Blank other) {
            return new Choice(name, blank -> taken(part, blank, other));
        }

        private static Blank taken(String part, Blank blank, Blank other) {
            BlankBuilder edit = blank.edit();
            switch (part) {
                case "staple" -> edit.staple(other.staple());
                case "gouge" -> edit.gouge(other.gouge()).gougeEnd(other.gougeEnd().orElse(null))
                        .cut(new Cut(blank.cut().measure(), blank.cut().edges(), blank.cut().shapeDry(), other.cut().gougeDry()));
                case "shape" -> edit.shape(other.shape()).insideWidths(other.insideWidths().orElse(null))
                        .cut(new Cut(other.cut().measure(), other.cut().edges(), other.cut().shapeDry(), blank.cut().gougeDry()));
                case "thread" -> {
                }
                default -> throw new IllegalArgumentException("There is no part called " + part + ".");
            }
            blank.numbers().keySet().stream().filter(path -> path.startsWith(part + ".")).forEach(edit::clear);
            other.numbers().forEach((path, value) -> {
                if (path.startsWith(part + ".")) {
                    edit.set(path, value);
                }
            });
            other.inputs().stream().filter(i -> i.path().startsWith(part + "."))
                    .forEach(i -> edit.tolerance(i.path(), i.tolerance().plusMinus(), i.tolerance().measured()));
            return edit.build();
        }
    }
}
