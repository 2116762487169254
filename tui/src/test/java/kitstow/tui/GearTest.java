package kitstow.tui;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import kitstow.tui.cli.ExitCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GearTest {
  private static final String TRIP = Run.small("trip.json");
  private static final String HEADER =
      "id,title,lengthMm,widthMm,heightMm,massKg,massSource,quantity,need,turns,bearsKg,marks,reach\n";

  @TempDir Path folder;

  @Test
  void gearOfAScenarioIsWrittenAsATable() {
    Run run = Run.of("gear", TRIP, "--csv");
    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(run.err())
        .startsWith("note: a table has no column for room kept clear")
        .contains("fridge");
    Golden.assertSame("small/gear.csv", run.outLines());
  }

  @Test
  void aTableGivesTheSameTableAgainThroughAScenario() throws IOException {
    String table = Run.of("gear", TRIP, "--csv").out();
    Run entries = Run.of("gear", file(table));
    assertThat(entries.err()).isEmpty();
    assertThat(entries.exitCode()).isEqualTo(ExitCode.OK);

    JsonObject gear = JsonParser.parseString(entries.out()).getAsJsonObject();
    JsonObject trip = JsonParser.parseString(Files.readString(Path.of(TRIP))).getAsJsonObject();
    trip.add("define", gear.get("define"));
    trip.add("gear", gear.get("gear"));
    Path catalogue = Files.createDirectory(folder.resolve("catalogue"));
    Files.copy(Path.of(Run.small("catalogue/small.json")), catalogue.resolve("small.json"));
    Path scenario = Files.writeString(folder.resolve("trip.json"), trip.toString());

    Run again = Run.of("gear", scenario.toString(), "--csv");
    assertThat(again.err()).isEmpty();
    assertThat(again.out()).isEqualTo(table);
  }

  @Test
  void faultsAreToldByLineAndColumnAllAtOnce() throws IOException {
    String list =
        file(
            HEADER
                + "chair,Chair,900,250,200,6 kg,estimate,2,nice,any,0,,fewDays\n"
                + "\n"
                + "box,\"Box, large\",0,400,300,12.5,guess,1,must,upright,20,food dusty,daily\n"
                + "chair,Second chair,,250,200,6,estimate,0,perhaps,LWH WLH,0,,fewDays\n");
    Run run = Run.of("gear", list);
    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(run.out()).isEmpty();
    Golden.assertSame(
        "small/gear.problems.txt", run.err().replace(list, "list.csv").lines().toList());
  }

  @Test
  void aWrongHeaderIsTold() throws IOException {
    Run run = Run.of("gear", file("id,title,colour\n"));
    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(run.err())
        .contains("line 1, column 3: is headed \"colour\", which is no column")
        .contains("line 1: has no column massKg");
  }

  @Test
  void faultsOfRowsAreToldBesideThoseOfTheHeader() throws IOException {
    Run run = Run.of("gear", file("title,lengthMm,widthMm,heightMm\nRod tube,1900,,180\n"));
    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(run.out()).isEmpty();
    assertThat(run.err())
        .contains("line 1: has no column massKg", "line 2, column 3 (widthMm)")
        .doesNotContain("line 2, no column");
  }

  @Test
  void aTableOfTitlesSizesAndMassesWillDo() throws IOException {
    String table =
        """
        title,lengthMm,widthMm,heightMm,massKg
        "Café & rods, long",1900,180,180,6.5
        Crab pot,600,600,150,4
        Crab pot,700,600,150,5
        !,100,100,100,1
        """;
    Run run = Run.of("gear", file(table));
    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(run.err()).startsWith("note: a table without a column marks");
    JsonObject gear = JsonParser.parseString(run.out()).getAsJsonObject();
    assertThat(gear.getAsJsonArray("gear").asList())
        .extracting(line -> line.getAsJsonObject().get("id").getAsString())
        .containsExactly("caf-rods-long", "crab-pot", "crab-pot-2", "item");
    JsonObject rods =
        gear.getAsJsonObject("define").getAsJsonArray("gear").get(0).getAsJsonObject();
    assertThat(rods.get("massSource").getAsString()).isEqualTo("estimate");
    assertThat(rods.getAsJsonArray("turns").asList())
        .extracting(turn -> turn.getAsString())
        .containsExactly("LWH", "WLH");
    assertThat(rods.get("bearsKg").getAsInt()).isZero();
    assertThat(rods.get("reach").getAsString()).isEqualTo("fewDays");
  }

  @Test
  void capitalLettersDoNotMatter() throws IOException {
    String row = "chair,Chair,900,250,200,6,Estimate,2,NICE,Any,0,Heavytool food,FewDays\n";
    Run run = Run.of("gear", file(HEADER.toUpperCase(Locale.ROOT) + row));
    assertThat(run.err()).isEmpty();
    assertThat(run.out()).isEqualTo(Run.of("gear", file(HEADER + row)).out());
    assertThat(run.out()).contains("\"heavyTool\"", "\"nice\"", "\"fewDays\"");
  }

  @Test
  void centimetresForMillimetresAreTold() throws IOException {
    Run run = Run.of("gear", file("title,lengthMm,widthMm,heightMm,massKg\nEsky,60,40,40,25\n"));
    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(run.err()).contains("is 25 kg in 0.096 L, must be less than lead weighs");
  }

  @Test
  void whatHoldsFuelIsFuelThoughNobodyHasMarkedIt() throws IOException {
    String table =
        """
        title,lengthMm,widthMm,heightMm,massKg,content,contentKg
        Jerry can,345,165,470,19,fuel,15
        """;
    Run run = Run.of("gear", file(table));
    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(run.out()).containsPattern("\"marks\": \\[\\s*\"fuel\"");
  }

  @Test
  void whatHasTheTitleOfACatalogueEntryIsAsItIsThere() throws IOException {
    String table =
        """
        title,lengthMm,widthMm,heightMm,massKg
        "Fuel can 20 L, steel, petrol",345,165,470,20
        """;
    Run run = Run.of("gear", file(table));
    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(run.out())
        .containsPattern("\"marks\": \\[\\s*\"fuel\"")
        .contains("\"kind\": \"fuel\"");
  }

  @Test
  void anOpenQuotationMarkIsTold() throws IOException {
    Run run = Run.of("gear", file(HEADER + "chair,\"Chair,900\n"));
    assertThat(run.exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(run.err()).contains("from line 2 on");
  }

  @Test
  void semicolonsAndAByteOrderMarkAreReadToo() throws IOException {
    String text = "\uFEFF" + HEADER.replace(',', ';');
    Run run =
        Run.of("gear", file(text + "chair;Chair;900;250;200;6;estimate;2;nice;any;0;;fewDays\r\n"));
    assertThat(run.err()).isEmpty();
    assertThat(run.exitCode()).isEqualTo(ExitCode.OK);
    assertThat(run.out()).contains("\"quantity\": 2", "\"need\": \"nice\"");
  }

  @Test
  void theDirectionMustBeClear() throws IOException {
    assertThat(Run.of("gear", TRIP).exitCode()).isEqualTo(ExitCode.BAD_INPUT);
    assertThat(Run.of("gear", file(HEADER), "--csv").exitCode()).isEqualTo(ExitCode.BAD_INPUT);
  }

  @Test
  void aTableWithSemicolonsMayHaveCommasForDecimals() throws IOException {
    String rows = "can,Water can,350,170,470,21.5,estimate,3,must,upright,12.5,,daily\n";
    String commas =
        (HEADER + rows).replace(",", ";").replace("21.5", "21,5").replace("12.5", "12,5");

    Run run = Run.of("gear", file(commas));

    assertThat(run.err()).isEmpty();
    assertThat(run.out()).isEqualTo(Run.of("gear", file(HEADER + rows)).out());
    assertThat(Run.of("gear", file((HEADER + rows).replace("21.5", "\"21,5\""))).err())
        .contains("column 6 (massKg): is the text \"21,5\"");
  }

  private String file(String text) throws IOException {
    return Files.writeString(folder.resolve("list.csv"), text).toString();
  }
}
