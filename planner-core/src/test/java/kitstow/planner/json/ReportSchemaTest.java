package kitstow.planner.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.gson.JsonObject;
import com.google.gson.JsonParser;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import kitstow.planner.LoadPlanner;
import kitstow.planner.report.CheckReport;
import kitstow.planner.report.Searched;
import kitstow.planner.statics.Bound;
import org.junit.jupiter.api.Test;

/** Reports keep to the schema that is published with them. */
class ReportSchemaTest {
  private final Schema schema = schema();

  private static Schema schema() {
    Path file = Path.of(System.getProperty("kitstow.scenarios"), "schema", "report.schema.json");
    try {
      return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
          .getSchema(Files.readString(file));
    } catch (IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  @Test
  void aReportIsValid() {
    assertThat(schema.validate(Reports.everyKeyJson(), InputFormat.JSON)).isEmpty();
  }

  @Test
  void aReportOnAPlanThatWasSearchedForIsValid() {
    CheckReport report = Reports.everyKey();
    Searched searched =
        new Searched(
            /* seed= */ 7L,
            OptionalLong.of(20L),
            OptionalDouble.empty(),
            OptionalLong.empty(),
            OptionalDouble.of(0.5),
            LoadPlanner.homeReasons(report),
            LoadPlanner.roomLeft(report),
            LoadPlanner.levers(report),
            Optional.of(
                new Bound(
                    /* floorNm= */ 900.0,
                    /* momentNm= */ 1000.0,
                    /* fixedNm= */ 600.0,
                    /* gearKg= */ 100.0)));
    assertThat(searched.rooms()).isNotEmpty();
    assertThat(
            schema.validate(
                ReportWriter.write(report, searched, LoadPlanner.mends(report)), InputFormat.JSON))
        .isEmpty();
  }

  @Test
  void suppliesAndWhatToWeighAreTold() {
    String text = Reports.shippedJson("remote-fortnight");
    assertThat(schema.validate(text, InputFormat.JSON)).isEmpty();
    JsonObject report = JsonParser.parseString(text).getAsJsonObject();
    assertThat(report.getAsJsonArray("supplies")).isNotEmpty();
    assertThat(report.getAsJsonArray("runsOut")).isEmpty();
    JsonObject first = report.getAsJsonObject("weighFirst");
    assertThat(first.get("thenBandKg").getAsDouble()).isLessThan(first.get("bandKg").getAsDouble());

    JsonObject dry = JsonParser.parseString(Reports.everyKeyJson()).getAsJsonObject();
    assertThat(dry.getAsJsonArray("runsOut")).isNotEmpty();
  }

  @Test
  void aKeyThatIsNotInTheSchemaIsRefused() {
    String more = Reports.everyKeyJson().replaceFirst("\"frame\"", "\"frames\"");
    assertThat(schema.validate(more, InputFormat.JSON)).isNotEmpty();
  }

  @Test
  void theSameReportIsTheSameText() {
    assertThat(Reports.everyKeyJson()).isEqualTo(Reports.everyKeyJson());
  }
}
