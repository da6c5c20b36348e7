package culm.bench.card;

import java.util.ArrayList;
import java.util.List;

import culm.figures.Numbers;

/**
 * What to do when the sides close early or late: for a count of turns seen, how far to move the fold so that the turns wanted are met.
 *
 * @param seen    what was seen, as on the card
 * @param allowed whether it may stay as it is
 * @param move    mm to change the tie length by, positive longer
 */
record Moves(String seen, boolean allowed, double move) {
    private static final int MOST_COLUMNS = 7;

    /** Columns from early to late, the last one for sides that are still open at the stop; none when it cannot be told. */
    static List<Moves> of(CardNumbers n) {
        List<Moves> moves = new ArrayList<>();
        if (n.perTurn().isEmpty()) {
            return moves;
        }
        int high = (int) Math.ceil(Math.max(n.most(), n.wanted())) + 2;
        for (int seen = high; seen >= 0 && moves.size() < MOST_COLUMNS - 1; seen--) {
            moves.add(new Moves(Numbers.fixed(seen, 0), seen >= n.fewest() && seen <= n.most(), (seen - n.wanted()) * n.perTurn().getAsDouble()));
        }
        moves.add(new Moves("still open", false, (-1 - n.wanted()) * n.perTurn().getAsDouble()));
        return moves;
    }

    /** The move as it is written: longer or shorter, in tenths. */
    String text() {
        return Math.abs(move) < 0.05 ? "0" : (move > 0 ? "+" : "\u2212") + Numbers.fixed(Math.abs(move), 1);
    }
}
