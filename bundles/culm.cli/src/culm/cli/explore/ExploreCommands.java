package culm.cli.explore;

import java.util.List;

import culm.blank.rules.Rules;
import culm.cli.Command;
import culm.geometry.profile.Profiles;

/** The commands that explore. */
public final class ExploreCommands {
    private ExploreCommands() {
    }

    /** @param profiles the types that are known; @param rules what to judge by */
    public static List<Command> all(Profiles profiles, Rules rules) {
        return Exploring.all(profiles, rules);
    }
}
