package culm.example.plugin;

import culm.geometry.shape.ShapeType;
import culm.testkit.ShapeTypeContract;

class FourWidthsTest extends ShapeTypeContract {
    @Override
    protected ShapeType type() {
        return new FourWidths();
    }
}
