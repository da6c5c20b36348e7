package culm.extensions;

import java.lang.reflect.InvocationTargetException;
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
import culm.geometry.profile.ProfileType;

/** Makes what was contributed to one point. What fails is noted and left out; nothing that a plug-in does ends the reading. */
final class PointReader<T> {
    private static final String ID = "id";
    private static final String CLASS = "class";
    private final IExtensionRegistry registry;
    private final Point<T> point;
    private final Consumer<Contribution> note;

    PointReader(IExtensionRegistry registry, Point<T> point, Consumer<Contribution> note) {
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
        String name = id;
        Optional<String> failure = Optional.empty();
        T made = null;
        try {
            made = created(declared.element, id, className);
            name = named(made, id);
            refuseTwice(id, taken);
        } catch (Refused e) {
            failure = Optional.of(e.getMessage());
        } catch (CoreException e) {
            Throwable why = e.getStatus().getException() == null ? e : e.getStatus().getException();
            failure = Optional.of("The class " + className + (why instanceof InvocationTargetException ? " fails at once: " : " cannot be loaded: ") + Failure.words(why) + ".");
        } catch (Throwable e) {
            if (!Failure.ownFault(e)) {
                throw e;
            }
            failure = Optional.of("The class " + className + " fails at once: " + Failure.words(e) + ".");
        }
        Contribution contribution = new Contribution(point, id, className, name, declared.plugIn, failure);
        note.accept(contribution);
        if (failure.isPresent()) {
            return Optional.empty();
        }
        taken.add(contribution);
        return Optional.of(made);
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
