package culm.blank.rules;

import java.util.List;

import culm.blank.Assessment;
import culm.blank.Limits;

/** Judges an assessment. A plain class without state; it never sees files or the screen. */
public interface Rule {
    /** Stable id, lower camel case. */
    String id();

    /** What it looks at, a few words. */
    String name();

    /** Its findings, none when it has nothing to say. */
    List<Finding> judge(Assessment assessment, Limits limits);
}
