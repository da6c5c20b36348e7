package culm.example.plugin;

import culm.blank.Assessment;
import culm.blank.Assessor;
import culm.blank.rules.Rule;
import culm.testkit.RuleContract;
import culm.testkit.Sample;

class EnoughCaneOnStapleTest extends RuleContract {
    @Override
    protected Rule rule() {
        return new EnoughCaneOnStaple();
    }

    @Override
    protected Assessment spoken() {
        return Assessor.assess(Sample.works().with("shape.foldedLength", 33));
    }
}
