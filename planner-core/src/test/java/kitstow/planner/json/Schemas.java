package kitstow.planner.json;

import com.google.gson.JsonArray;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** The shipped schemas: what is wrong with a text, and which keys an object of a text may have. */
final class Schemas {
  private static final String BASE = "https://kitstow.example/schema/";
  private static final Path FOLDER = Path.of(System.getProperty("kitstow.scenarios"), "schema");

  private static final Map<String, String> TEXTS = new LinkedHashMap<>();

  static {
    for (FaultyFiles.Kind kind : FaultyFiles.Kind.values()) {
      TEXTS.put(BASE + file(kind), FaultyFiles.text(FOLDER.resolve(file(kind))));
    }
  }

  private static final SchemaRegistry REGISTRY =
      SchemaRegistry.withDefaultDialect(
          SpecificationVersion.DRAFT_2020_12, builder -> builder.schemas(TEXTS));

  private Schemas() {}

  private static String file(FaultyFiles.Kind kind) {
    return kind.name().toLowerCase(Locale.ROOT) + ".schema.json";
  }

  /** Where a text breaks its schema, as paths such as {@code $.gear[0].massKg}. */
  static Set<String> faultyPaths(FaultyFiles.Kind kind, String text) {
    Schema schema = REGISTRY.getSchema(SchemaLocation.of(BASE + file(kind)));
    Set<String> paths = new TreeSet<>();
    for (Error error : schema.validate(text, InputFormat.JSON)) {
      StringBuilder path = new StringBuilder("$");
      for (int i = 0; i < error.getInstanceLocation().getNameCount(); i++) {
        Object step = error.getInstanceLocation().getElement(i);
        path.append(step instanceof Integer ? "[" + step + "]" : "." + step);
      }
      boolean ofKey = "required".equals(error.getKeyword());
      ofKey |= "additionalProperties".equals(error.getKeyword());
      paths.add(ofKey ? path + "." + error.getProperty() : path.toString());
    }
    return paths;
  }

  /** Called for each object of a text whose keys its schema lists. */
  interface Visitor {
    /**
     * Visits an object.
     *
     * @param name where the schema describes it
     * @param schema that description
     * @param object the object
     */
    void visit(String name, JsonObject schema, JsonObject object);
  }

  /** Visits the objects of a text together with what their schema says of them. */
  static void visit(FaultyFiles.Kind kind, JsonElement text, Visitor visitor) {
    String file = file(kind);
    visit(file, "", root(file), text, visitor);
  }

  private static JsonObject root(String file) {
    return JsonParser.parseString(TEXTS.get(BASE + file)).getAsJsonObject();
  }

  private static void visit(
      String file, String name, JsonObject schema, JsonElement value, Visitor visitor) {
    if (schema.has("$ref")) {
      String[] ref = schema.get("$ref").getAsString().split("#/\\$defs/", -1);
      String target = ref[0].isEmpty() ? file : ref[0];
      JsonObject described = root(target).getAsJsonObject("$defs").getAsJsonObject(ref[1]);
      visit(target, ref[1], described, value, visitor);
    } else if (value instanceof JsonArray list && schema.has("items")) {
      for (JsonElement entry : list) {
        visit(file, name + "[]", schema.getAsJsonObject("items"), entry, visitor);
      }
    } else if (value instanceof JsonObject object && schema.has("properties")) {
      visitor.visit(file + " " + name, schema, object);
      JsonObject properties = schema.getAsJsonObject("properties");
      for (String key : Set.copyOf(object.keySet())) {
        if (properties.has(key)) {
          visit(file, name + "." + key, properties.getAsJsonObject(key), object.get(key), visitor);
        }
      }
    }
  }

  /** All descriptions of objects in the schemas: the keys of each. */
  static Set<String> allKeys() {
    Set<String> keys = new TreeSet<>();
    for (FaultyFiles.Kind kind : FaultyFiles.Kind.values()) {
      String file = file(kind);
      JsonObject root = root(file);
      collect(file, "", root, keys);
      if (root.has("$defs")) {
        for (Map.Entry<String, JsonElement> def : root.getAsJsonObject("$defs").entrySet()) {
          collect(file, def.getKey(), def.getValue().getAsJsonObject(), keys);
        }
      }
    }
    return keys;
  }

  private static void collect(String file, String name, JsonObject schema, Set<String> keys) {
    if (schema.has("items")) {
      collect(file, name + "[]", schema.getAsJsonObject("items"), keys);
    }
    if (schema.has("properties")) {
      JsonObject properties = schema.getAsJsonObject("properties");
      for (String key : properties.keySet()) {
        keys.add(file + " " + name + "." + key);
        collect(file, name + "." + key, properties.getAsJsonObject(key), keys);
      }
    }
  }
}
