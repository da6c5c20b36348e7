package culm.bench;

import culm.blank.Blank;
import culm.blank.BlankBuilder;
import culm.blank.Inputs;
import culm.blank.Profile;
import culm.geometry.profile.Profiles;

/** The blank of the check values, and others made from it. */
public final class Blanks {
    public static final Profiles PROFILES = Profiles.load();

    private Blanks() {
    }

    /** Staple 47, tie 72, wrap to 46.5: closes at 46.0488965 without compression. */
    public static Blank check() {
        return new BlankBuilder(Profile.standard(PROFILES.staples().find("culm.staple.oval").orElseThrow()),
                Profile.standard(PROFILES.gouges().find("culm.gouge.middleAndSide").orElseThrow()),
                Profile.standard(PROFILES.shapes().find("culm.shape.measured").orElseThrow()))
                .set(Inputs.COMPRESSION, 0).set(Inputs.CORK_TOP, 25).set(Inputs.FINISHED, 69.5).build();
    }
}
