package culm.blank.rules;

import java.util.List;

import culm.blank.Assessment;
import culm.blank.Limits;
import culm.blank.Stretch;

/** Sides that close, open and close again: every other closed stretch is told. */
public final class OpensAgain implements Rule {
    @Override
    public String id() {
        return "opensAgain";
    }

    @Override
    public String name() {
        return "closes once";
    }

    @Override
    public List<Finding> judge(Assessment a, Limits limits) {
        List<Stretch> closed = a.closing().closed();
        int others = a.sidesCloseAt().isPresent() ? closed.size() - 1 : closed.size();
        return closed.subList(0, others).stream().map(s -> Finding.of(id(), Severity.WARNING, "The sides are also closed from " + Say.along(s.from()) + " to " + Say.along(s.to())
                + ", and open again above.").at("shape.foldedLength").measuredLength(s.to()).because("What counts is closed all the way to the staple's top.")
                .remedy("Look at the widths of the shape there.")).toList();
    }
}
