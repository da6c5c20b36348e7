package culm.blank;

import java.util.List;

import culm.geometry.profile.Parameter;
import culm.geometry.profile.ProfileType;

/** What a profile type of a test says of itself. */
public abstract class TestType implements ProfileType {
    private final String id;
    private final String name;
    private final List<Parameter> parameters;

    /** @param parameters the numbers it takes */
    protected TestType(String id, String name, List<Parameter> parameters) {
        this.id = id;
        this.name = name;
        this.parameters = parameters;
    }

    @Override
    public String id() {
        return id;
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public String help() {
        return "A test.";
    }

    @Override
    public List<Parameter> parameters() {
        return parameters;
    }
}
