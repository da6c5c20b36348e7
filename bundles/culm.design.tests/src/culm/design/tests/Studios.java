package culm.design.tests;

import java.nio.file.Path;

import culm.design.Bridge;
import culm.geometry.profile.Profiles;
import culm.model.Design;
import culm.model.files.ModelFiles;
import culm.model.problem.FileProblemException;
import culm.model.studio.Studio;

/** The example studio, and what is needed to read it. */
final class Studios {
    static final ModelFiles FILES = new ModelFiles();
    static final Bridge BRIDGE = new Bridge(Profiles.load());

    private Studios() {
    }

    static Path examples() {
        return Path.of(System.getProperty("culm.examples"), "studio").normalize();
    }

    static Studio studio() {
        return Studio.at(examples(), FILES);
    }

    static Path file(String name) {
        return examples().resolve(name);
    }

    static Design design(String name) throws FileProblemException {
        return FILES.load(file(name), name, Design.class).document();
    }
}
