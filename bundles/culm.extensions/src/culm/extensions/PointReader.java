package culm.extensions;

import java.lang.reflect.InvocationTargetException;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Consumer;

import org.eclipse.core.runtime.CoreException;
import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExtensionRegistry;

import culm.blank.Inputs;
import culm.geometry.guard.Description;
import culm.geometry.guard.Failure;
import culm.geometry.guard.Supervised;
import culm.geometry.profile.ProfileType;

/** Makes what was contributed to one point. What fails is noted and left out; nothing that a plug-in does ends the reading. */
final class PointReader<T> {
    private static final String ID = "id";
    private static final String CLASS = "class";
    private final IExtensionRegistry registry;
    private final Point<T> point;
    private final Duration longest;
    private final Consumer<Contribution> note;

    /** @param longest how long one class of a plug-in may take to be made and described */
    PointReader(IExtensionRegistry registry, Point<T> point, Duration longest, Consumer<Contribution> note) {
        this.longest = longest;
        this.registry = registry;
        this.point = point;
        this.note = note;
    }

    /** Everything usable: what ships first, then by the plug-in's id, each plug-in in the order of its own file. */
    List<T> read(BiFunction<T, PlugIn, T> guard) {
        List<Declared> declared = new ArrayList<>();
        for (IConfigurationElement element : registry.getConfigurationElementsFor(point.fullName())) {
            declared.add(new Declared(element, PlugIn.of(element.getContributor())));
        }
        declared.sort(Comparator.comparing((Declared d) -> !d.plugIn.ships()).thenComparing(d -> d.plugIn.id()));
        List<T> usable = new ArrayList<>();
        List<Contribution> taken = new ArrayList<>();
        for (Declared each : declared) {
            make(each, taken).ifPresent(made -> usable.add(each.plugIn.ships() ? made : guard.apply(made, each.plugIn)));
        }
        return usable;
    }

    private Optional<T> make(Declared declared, List<Contribution> taken) {
        String id = Objects.requireNonNullElse(declared.element.getAttribute(ID), "");
        String className = Objects.requireNonNullElse(declared.element.getAttribute(CLASS), "");
        Made<T> made;
        try {
            // What ships is known to come back.
            made = declared.plugIn.ships() ? tried(declared, id, className, taken) : Supervised.call(longest, () -> tried(declared, id, className, taken));
        } catch (Supervised.Overdue e) {
            made = Made.failed(id, "The class " + className + " has not come back after " + longest.toMillis() / 1000.0 + " s when it was made; it was left behind.");
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            made = Made.failed(id, "Making the class " + className + " was interrupted.");
        }
        Contribution contribution = new Contribution(point, id, className, made.name, declared.plugIn, made.failure);
        note.accept(contribution);
        if (made.failure.isEmpty()) {
            taken.add(contribution);
        }
        return made.object;
    }

    private Made<T> tried(Declared declared, String id, String className, List<Contribution> taken) {
        try {
            T object = created(declared.element, id, className);
            String name = named(object, id);
            refuseTwice(id, taken);
            return new Made<>(Optional.of(object), name, Optional.empty());
        } catch (Refused e) {
            return Made.failed(id, e.getMessage());
        } catch (CoreException e) {
            Throwable why = e.getStatus().getException() == null ? e : e.getStatus().getException();
            return Made.failed(id, "The class " + className + (why instanceof InvocationTargetException ? " fails at once: " : " cannot be loaded: ") + Failure.words(why) + ".");
        } catch (Throwable e) {
            if (!Failure.ownFault(e)) {
                throw e;
            }
            return Made.failed(id, "The class " + className + " fails at once: " + Failure.words(e) + ".");
        }
    }

    private T created(IConfigurationElement element, String id, String className) throws CoreException, Refused {
        if (!element.getName().equals(point.element())) {
            throw new Refused("The element " + element.getName() + " has no place here; expected is " + point.element() + ".");
        }
        if (id.isBlank() || className.isBlank()) {
            throw new Refused("Its plugin.xml gives " + (id.isBlank() ? "no id." : "no class."));
        }
        Object object = element.createExecutableExtension(CLASS);
        if (!point.kind().isInstance(object)) {
            throw new Refused("The class " + className + " is no " + point.kind().getName() + ".");
        }
        return point.kind().cast(object);
    }

    /** Asks everything that a form asks at once, so that a type that cannot even be described never reaches one. */
    private String named(T made, String id) throws Refused {
        String said = point.idOf().apply(made);
        if (!id.equals(said)) {
            throw new Refused("Its class says its id is " + said + ", its plugin.xml says " + id + ".");
        }
        String name = point.nameOf().apply(made);
        if (name == null || name.isBlank()) {
            throw new Refused("It has no name.");
        }
        if (made instanceof ProfileType type) {
            Optional<String> problem = Description.problem(type, Inputs.of(point.part()));
            if (problem.isPresent()) {
                throw new Refused(problem.get());
            }
        }
        return name;
    }

    private void refuseTwice(String id, List<Contribution> taken) throws Refused {
        Optional<Contribution> other = taken.stream().filter(t -> t.id().equals(id)).findFirst();
        if (other.isPresent()) {
            throw new Refused("The id " + id + " is taken already by " + other.get().plugIn().said() + ".");
        }
    }

    /** What became of one class: the object, or why there is none. */
    private record Made<T>(Optional<T> object, String name, Optional<String> failure) {
        static <T> Made<T> failed(String id, String why) {
            return new Made<>(Optional.empty(), id, Optional.of(why));
        }
    }

    private record Declared(IConfigurationElement element, PlugIn plugIn) {
    }

    /** A contribution that cannot be used, with its sentence. */
    private static final class Refused extends Exception {
        private static final long serialVersionUID = 1L;

        Refused(String sentence) {
            super(sentence);
        }
    }
}
