package culm.model.problem;

import java.util.List;

/** A file could not be used; says everything that was found, the first problem first. */
public class FileProblemException extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient List<FileProblem> problems;

    /**
     * One problem.
     *
     * @param problem the problem
     */
    public FileProblemException(FileProblem problem) {
        this(List.of(problem));
    }

    /**
     * Several problems of one file.
     *
     * @param problems at least one
     */
    public FileProblemException(List<FileProblem> problems) {
        super(problems.get(0).message());
        this.problems = List.copyOf(problems);
    }

    /** {@return the first problem} */
    public FileProblem problem() {
        return problems.get(0);
    }

    /** {@return all problems, at least one} */
    public List<FileProblem> problems() {
        return problems;
    }
}
