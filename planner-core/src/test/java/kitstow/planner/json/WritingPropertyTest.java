package kitstow.planner.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import java.util.Random;
import java.util.stream.LongStream;
import kitstow.planner.geometry.Turn;
import kitstow.planner.model.Catalogue;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Placement;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.SpacePointMm;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is written reads back as what it was, whatever it is. */
class WritingPropertyTest {
  private static final List<Turn> TURNS = List.of(Turn.values());

  static LongStream seeds() {
    return LongStream.rangeClosed(1, 200);
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void writtenScenarioReadsBackTheSame(long seed) {
    Scenario scenario = new ScenarioGenerator(seed).scenario();
    String text = ScenarioWriter.write(scenario);
    Outcome<Scenario> outcome = ScenarioReader.read(text, Catalogue.EMPTY);
    assertThat(TestFiles.problems(outcome)).as("seed " + seed).isEmpty();
    assertThat(TestFiles.value(outcome)).as("seed " + seed).isEqualTo(scenario);
    assertThat(ScenarioWriter.write(TestFiles.value(outcome))).isEqualTo(text);
  }

  @Test
  void scenarioWithEveryKeyReadsBackTheSameWithoutItsCatalogue() {
    Scenario scenario = TestFiles.scenario();
    String text = ScenarioWriter.write(scenario);
    assertThat(TestFiles.value(ScenarioReader.read(text, Catalogue.EMPTY))).isEqualTo(scenario);
  }

  @Test
  void unitsOfOneEntryAreStillOfOneEntryWhenReadBack() {
    String drawer = "\"entry\": \"drawer\",\n      \"bays\": [\"floor-left\"],";
    String second = "\"id\": \"spare-drawer\", \"need\": \"nice\", " + drawer;
    String text =
        TestFiles.text("scenario.json")
            .replace(
                "\"modules\": [\n    {", "\"modules\": [\n    {" + second + "\"title\": \"B\"}, {");
    Scenario scenario = TestFiles.value(ScenarioReader.read(text, TestFiles.catalogue()));
    Scenario again =
        TestFiles.value(ScenarioReader.read(ScenarioWriter.write(scenario), Catalogue.EMPTY));
    assertThat(again).isEqualTo(scenario);
    assertThat(again.modules())
        .extracting(choice -> choice.module().entryId())
        .containsExactly("drawer", "drawer", "water-shelf");
    assertThat(again.accessories())
        .extracting(accessory -> accessory.entryId())
        .containsExactly("bar", "bar", "bar");
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void writtenPlanReadsBackTheSame(long seed) {
    Scenario scenario = TestFiles.scenario();
    LoadPlan plan = plan(scenario, new Random(seed));
    String text = PlanWriter.write(plan);
    assertThat(TestFiles.value(PlanReader.read(text, scenario))).as(text).isEqualTo(plan);
  }

  @Test
  void writtenTextUsesLineFeedsAndTwoSpaces() {
    String text = ScenarioWriter.write(TestFiles.scenario());
    assertThat(text).startsWith("{\n  \"schemaVersion\": 1,\n").endsWith("}\n");
    assertThat(text).doesNotContain("\r", "\t", ".0,", "E+");
  }

  private static LoadPlan plan(Scenario scenario, Random random) {
    Map<String, String> bays = new LinkedHashMap<>();
    bays.put("drawer-left", "floor-left");
    if (random.nextBoolean()) {
      bays.put("shelf", random.nextBoolean() ? "floor-rear" : "drawer-left/deck");
    }
    List<Placement> placements =
        List.of(
            placement("can", random.nextBoolean() ? 1 : 2, 0, random),
            placement("swag", 1, random.nextInt(2), random),
            placement("fridge", 1, 0, random));
    LoadPlan.Origin origin =
        random.nextBoolean()
            ? LoadPlan.Origin.HAND
            : new LoadPlan.Origin(
                "solver",
                OptionalLong.of(random.nextLong()),
                OptionalLong.of(random.nextLong() >>> 1),
                OptionalLong.of(1 + random.nextInt(100)));
    return new LoadPlan(scenario.id(), bays, placements, origin);
  }

  private static Placement placement(String item, int unit, int shape, Random random) {
    SpacePointMm corner =
        new SpacePointMm(
            random.nextInt(4000) - 2000, random.nextInt(4000) - 2000, random.nextInt(4000));
    Turn turn = TURNS.get(random.nextInt(TURNS.size()));
    return new Placement(item, unit, "canopy-roof", shape, turn, corner);
  }
}
