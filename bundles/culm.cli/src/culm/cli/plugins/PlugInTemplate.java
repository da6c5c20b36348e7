package culm.cli.plugins;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;

/** What a new plug-in can be of, with the class that its project starts with. */
enum PlugInTemplate {
    STAPLE("stapleTypes", "stapleType", "Cone", "TypeTest", "culm.geometry.staple.StapleType"),
    GOUGE("gougeTypes", "gougeType", "EvenFall", "TypeTest", "culm.geometry.gouge.GougeType"),
    SHAPE("shapeTypes", "shapeType", "BentLine", "TypeTest", "culm.geometry.shape.ShapeType"),
    RULE("rules", "rule", "TieInReach", "RuleTest", "culm.blank.rules.Rule"),
    EXPORTER("exporters", "exporter", "OneLine", "ExporterTest", "culm.blank.export.Exporter");

    private final String point;
    private final String element;
    private final String type;
    private final String test;
    private final String kind;

    PlugInTemplate(String point, String element, String type, String test, String kind) {
        this.point = point;
        this.element = element;
        this.type = type;
        this.test = test;
        this.kind = kind;
    }

    /** The word for it on the command line. */
    String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }

    /** Writes a project into a new folder. @param name what the plug-in, its package and the beginning of its ids are called */
    void write(Path folder, String name) throws IOException {
        String packageFolder = name.replace('.', '/');
        Map<String, String> files = new LinkedHashMap<>();
        files.put("README.md", "README");
        files.put("META-INF/MANIFEST.MF", "MANIFEST");
        files.put("plugin.xml", "plugin");
        files.put("src/" + packageFolder + "/" + type + ".java", type);
        files.put("test/" + packageFolder + "/" + type + "Test.java", test);
        for (Map.Entry<String, String> file : files.entrySet()) {
            Path target = folder.resolve(file.getKey());
            Files.createDirectories(target.getParent());
            Files.writeString(target, filled(text(file.getValue()), name));
        }
    }

    private String filled(String text, String name) {
        String id = name + "." + Character.toLowerCase(type.charAt(0)) + type.substring(1);
        return text.replace("@NAME@", name).replace("@ID@", id).replace("@CLASS@", type).replace("@POINT@", point).replace("@ELEMENT@", element)
                .replace("@INTERFACE@", kind).replace("@KIND@", kind.substring(kind.lastIndexOf('.') + 1));
    }

    private static String text(String template) throws IOException {
        try (InputStream in = PlugInTemplate.class.getResourceAsStream("template/" + template + ".txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}
