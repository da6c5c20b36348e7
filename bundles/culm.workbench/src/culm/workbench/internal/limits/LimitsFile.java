package culm.workbench.internal.limits;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;

import culm.blank.Limits;
import culm.model.ModelFactory;
import culm.model.NamedValue;
import culm.model.files.Loaded;
import culm.model.problem.FileProblemException;
import culm.model.studio.Studio;
import culm.workbench.internal.app.Workshop;

/** The file of a studio's limits. What in it is not known here is kept. */
final class LimitsFile {
    private final Workshop workshop;
    private final Studio studio;

    LimitsFile(Workshop workshop, Studio studio) {
        this.workshop = workshop;
        this.studio = studio;
    }

    Limits read() throws FileProblemException {
        Limits limits = Limits.STANDARD;
        Optional<Loaded<culm.model.Limits>> loaded = studio.limits();
        if (loaded.isPresent()) {
            for (NamedValue value : loaded.get().document().getValues()) {
                if (Limits.all().containsKey(value.getName())) {
                    limits = limits.with(value.getName(), value.getValue());
                }
            }
        }
        return limits;
    }

    void write(Limits limits) throws FileProblemException {
        Optional<Loaded<culm.model.Limits>> loaded = studio.limits();
        culm.model.Limits document = loaded.map(Loaded::document).orElseGet(() -> {
            culm.model.Limits made = ModelFactory.eINSTANCE.createLimits();
            made.setId("limits");
            return made;
        });
        document.getValues().removeIf(v -> Limits.all().containsKey(v.getName()));
        for (Map.Entry<String, Double> entry : limits.changed().entrySet()) {
            NamedValue value = ModelFactory.eINSTANCE.createNamedValue();
            value.setName(entry.getKey());
            value.setValue(entry.getValue());
            document.getValues().add(value);
        }
        Path file = studio.root().resolve(Studio.LIMITS_FILE);
        workshop.files().save(document, file, loaded.map(Loaded::stamp));
    }
}
