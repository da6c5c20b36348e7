package culm.blank.chance;

import java.util.List;

/**
 * A stack of lengths: the sum of s_i x_i with signs or factors s_i, and how its give or take adds up. Lengths mm.
 *
 * @param terms what is added up, at least one
 */
public record Stack(List<Term> terms) {
    /**
     * One length of a stack.
     *
     * @param name   the bench's word for it
     * @param factor +1 or -1, or any other factor
     * @param length how it varies
     */
    public record Term(String name, double factor, Distribution length) {
        /** A length known to plus or minus a tolerance, uniform within it. */
        public static Term of(String name, double factor, double length, double plusMinus) {
            return new Term(name, factor, new Distribution.Uniform(length, plusMinus));
        }
    }

    /** @throws IllegalArgumentException without a term */
    public Stack {
        terms = List.copyOf(terms);
        if (terms.isEmpty()) {
            throw new IllegalArgumentException("a stack needs a length");
        }
    }

    /** The sum of the expected lengths. */
    public double nominal() {
        return terms.stream().mapToDouble(t -> t.factor() * t.length().mean()).sum();
    }

    /** Worst case: the sum of |s| times how far each length reaches. */
    public double worstCase() {
        return terms.stream().mapToDouble(t -> Math.abs(t.factor()) * t.length().reach()).sum();
    }

    /** Root sum of squares of |s| times how far each length reaches. */
    public double rootSumOfSquares() {
        return Math.sqrt(terms.stream().mapToDouble(t -> Math.pow(t.factor() * t.length().reach(), 2)).sum());
    }

    /** Standard uncertainty, the root sum of squares of s u (JCGM 100:2008, 5.1.2). */
    public double standardUncertainty() {
        return Math.sqrt(terms.stream().mapToDouble(t -> Math.pow(t.factor() * t.length().standardUncertainty(), 2)).sum());
    }

    /** The distributions propagated. @param draws how many; @param seed the same seed gives the same result */
    public Propagation propagated(int draws, long seed) {
        double[] factors = terms.stream().mapToDouble(Term::factor).toArray();
        return Propagation.of(x -> {
            double sum = 0;
            for (int i = 0; i < x.length; i++) {
                sum += factors[i] * x[i];
            }
            return sum;
        }, terms.stream().map(Term::length).toList(), draws, seed);
    }
}
