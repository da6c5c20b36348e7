package culm.design.edit;

import java.util.OptionalDouble;

import culm.model.Design;
import culm.model.Limits;
import culm.model.ModelFactory;
import culm.model.NamedValue;

/** Changes the limits that a design sets for itself. */
final class LimitEdits {
    private LimitEdits() {
    }

    static void set(Design design, String id, OptionalDouble value) {
        Limits limits = design.getLimits();
        if (limits == null && value.isPresent()) {
            limits = ModelFactory.eINSTANCE.createLimits();
            design.setLimits(limits);
        }
        if (limits == null) {
            return;
        }
        NamedValue known = limits.getValues().stream().filter(v -> id.equals(v.getName())).findFirst().orElse(null);
        if (value.isEmpty()) {
            limits.getValues().remove(known);
            return;
        }
        if (known == null) {
            known = ModelFactory.eINSTANCE.createNamedValue();
            known.setName(id);
            limits.getValues().add(known);
        }
        known.setValue(value.getAsDouble());
    }
}
