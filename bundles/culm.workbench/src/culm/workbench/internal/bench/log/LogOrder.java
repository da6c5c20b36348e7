package culm.workbench.internal.bench.log;

import java.util.Comparator;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;

import culm.bench.log.Tied;

/**
 * The order of blanks by one column of their list; what is not noted comes last either way, and equals stay as the file has them.
 *
 * @param column as {@link LogRows} has it
 * @param down whether the largest or last comes first
 */
record LogOrder(int column, boolean down) implements Comparator<Tied> {
    /** {@return the other way round} */
    LogOrder turned() {
        return new LogOrder(column, !down);
    }

    @Override
    public int compare(Tied a, Tied b) {
        return switch (column) {
            case 0 -> by(LogOrder::number).thenComparing(by(t -> word(t.number()))).compare(a, b);
            case 1 -> by(Tied::on).compare(a, b);
            case 2 -> by(t -> word(t.by())).compare(a, b);
            case 3 -> by(t -> boxed(t.seen().turns())).compare(a, b);
            default -> by(t -> word(LogRows.state(t))).compare(a, b);
        };
    }

    private <T extends Comparable<? super T>> Comparator<Tied> by(Function<Tied, Optional<T>> key) {
        Comparator<T> way = down ? Comparator.reverseOrder() : Comparator.naturalOrder();
        return Comparator.comparing(t -> key.apply(t).orElse(null), Comparator.nullsLast(way));
    }

    /** Numbers count: 9 comes before 10. */
    private static Optional<Integer> number(Tied tied) {
        return tied.number().matches("\\d{1,8}") ? Optional.of(Integer.valueOf(tied.number())) : Optional.empty();
    }

    private static Optional<String> word(String text) {
        return text.isEmpty() ? Optional.empty() : Optional.of(text.toLowerCase(java.util.Locale.ROOT));
    }

    private static Optional<Double> boxed(OptionalDouble turns) {
        return turns.isPresent() ? Optional.of(turns.getAsDouble()) : Optional.empty();
    }
}
