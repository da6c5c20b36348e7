package culm.example.plugin;

import culm.geometry.staple.StapleType;
import culm.testkit.StapleTypeContract;

class SteppedTubeTest extends StapleTypeContract {
    @Override
    protected StapleType type() {
        return new SteppedTube();
    }
}
