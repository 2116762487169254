package kitstow.planner.generated;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import kitstow.planner.geometry.BoxMm;
import kitstow.planner.model.Accessory;
import kitstow.planner.model.LoadPlan;
import kitstow.planner.model.Loading;
import kitstow.planner.model.Regimes;
import kitstow.planner.model.RuleId;
import kitstow.planner.model.Scenario;
import kitstow.planner.model.Settings;
import kitstow.planner.model.Trailer;
import kitstow.planner.report.CheckReport;
import kitstow.planner.report.LimitReading;
import kitstow.planner.rules.Situation;
import kitstow.planner.statics.TyreLoadIndex;
import kitstow.planner.testkit.Masses;
import kitstow.planner.testkit.OtherSettings;
import kitstow.planner.testkit.RigBuilder;

/**
 * Sets the limits of the whole ute: wide first, then one after the other so tight that only part of
 * the gear may come, measured from the load without any gear.
 */
final class LimitMaker {
  private static final int TYRES = 2;
  private static final int FOREMOST_MM = -900;
  private static final int REGULATED = 5;
  private static final int FRONT_FLOOR_PERMILLE = 600;
  private static final long LIGHT_ROOF_GEAR_G = 5_000L;

  /** What there is to spare where limits are only told: what must come is more than that. */
  private static final double LITTLE = 0.1;

  private final Random random;
  private final RigBuilder builder;
  private final long gearG;
  private final int number;
  private final Theme theme;
  private final boolean onlyTold;
  private long frontG = Masses.kg(1000);
  private long rearG = Masses.kg(700);

  LimitMaker(Random random, RigMaker rig, long gearG, int number) {
    this.random = random;
    this.builder = rig.builder();
    this.gearG = gearG;
    this.number = number;
    this.theme = Theme.of(number);
    this.onlyTold = GeneratedScenarios.onlyTold(number);
  }

  Scenario tighten() {
    wide();
    regulate();
    if (GeneratedScenarios.tows(number)) {
      emptyG(Masses.kg(380), Masses.kg(1300));
      builder.accessory(rearBar());
    }
    if (onlyTold || !theme.uteIsStrong()) {
      tightenUte();
    }
    if (onlyTold || !theme.roofIsStrong()) {
      roofs();
    }
    Scenario scenario = builder.scenario();
    if (!scenario.trailers().isEmpty()) {
      trailer(scenario.trailers().get(0));
    }
    builder.settings(settings());
    return builder.scenario();
  }

  private void tightenUte() {
    if (onlyTold || number % 4 == 1) {
      frontTyres();
    }
    if (onlyTold || number % 4 == 2) {
      rearTyres();
    }
    for (int which = 0; which < 5; which++) {
      if (onlyTold || number / 2 % 5 == which) {
        tighten(which);
      }
    }
  }

  private Settings settings() {
    Settings defaults = Settings.DEFAULTS;
    return OtherSettings.with(
            onlyTold ? Settings.MassLimits.REPORT : defaults.massLimits(),
            defaults.supportPermille(),
            number % 8 != 1 || theme.leastG() > LIGHT_ROOF_GEAR_G
                ? LIGHT_ROOF_GEAR_G
                : defaults.roofGearG())
        .withRegimes(regimes());
  }

  /** In one of five a share of the front axle is asked for, in another one an overhang. */
  private Regimes regimes() {
    Regimes usual = Regimes.DEFAULTS;
    return new Regimes(
        usual.ballShareLeastPermille(),
        usual.ballShareMostPermille(),
        number % REGULATED == 0 ? FRONT_FLOOR_PERMILLE : 0,
        number % REGULATED == 1 ? Regimes.RearOverhang.SIXTY_PERCENT : Regimes.RearOverhang.NONE);
  }

  /** What reaches far back where an overhang is asked for. */
  private void regulate() {
    if (number % REGULATED == 1) {
      builder.accessory(
          accessory("spare-wheel-arm", Masses.kg(25), new BoxMm(4700, -300, 500, 4950, 300, 900)));
    }
  }

  private void wide() {
    builder
        .ute(
            ute ->
                ute.foremostXMm(FOREMOST_MM)
                    .gvmG(Masses.kg(6000))
                    .frontAxleG(Masses.kg(3500))
                    .rearAxleG(Masses.kg(4500))
                    .gcmG(Masses.kg(12_000))
                    .frontTyres(130, 4)
                    .rearTyres(130, 4)
                    .cabRoofG(Masses.kg(200), Masses.kg(400)))
        .canopyRoofG(Masses.kg(200), Masses.kg(500))
        .trayRating(Masses.always(Masses.kg(5000)));
  }

  private static Accessory rearBar() {
    return accessory("rear-bar", Masses.kg(170), new BoxMm(4300, -600, 400, 4400, 600, 700));
  }

  private static Accessory accessory(String id, long massG, BoxMm box) {
    return new Accessory(
        id,
        id,
        /* entryId= */ id,
        /* source= */ "test",
        Masses.weighed(massG),
        box,
        Optional.empty());
  }

  /** Some of the gear, or little of it where limits are only told. */
  private long gearShareG(double of) {
    double share = onlyTold ? LITTLE : 0.3 + 0.7 * random.nextDouble();
    return Math.round(gearG * of * share);
  }

  private void tighten(int which) {
    switch (which) {
      case 0 -> builder.ute(ute -> ute.gvmG(bareG(RuleId.GVM_LIMIT) + gearShareG(0.35)));
      case 1 -> builder.ute(ute -> ute.rearAxleG(bareG(RuleId.REAR_AXLE_LIMIT) + gearShareG(0.35)));
      case 2 ->
          builder.ute(ute -> ute.frontAxleG(bareG(RuleId.FRONT_AXLE_LIMIT) + gearShareG(0.02)));
      case 3 -> builder.ute(ute -> ute.gcmG(bareG(RuleId.GCM_LIMIT) + gearShareG(0.25)));
      default -> builder.trayRating(Masses.always(bareG(RuleId.TRAY_RATING) + gearShareG(0.25)));
    }
  }

  private void roofs() {
    builder.canopyRoofG(
        bareG(RuleId.CANOPY_ROOF_LIMIT) + Masses.kg(1 + random.nextInt(6)), Masses.kg(300));
    int leastKg = GeneratedScenarios.lightBars(number) ? 60 : 1;
    builder.ute(ute -> ute.cabRoofG(Masses.kg(leastKg + random.nextInt(6)), Masses.kg(200)));
  }

  private void trailer(Trailer trailer) {
    long totalG = trailer.total().massG();
    switch (random.nextInt(3)) {
      case 0 -> builder.ute(ute -> ute.towingG(totalG - Masses.kg(30), Masses.kg(750)));
      case 1 -> builder.ute(ute -> ute.ballG(trailer.ball().massG() - Masses.kg(5)));
      default ->
          builder.ute(
              ute ->
                  ute.towingG(totalG - Masses.kg(30), Masses.kg(750))
                      .ballG(trailer.ball().massG() - Masses.kg(5)));
    }
  }

  /** Load indices go in steps, so here the empty ute is made as heavy as its tyres allow. */
  private void frontTyres() {
    builder.ute(ute -> ute.frontTyres(120, TYRES));
    long spareG = capacityG(120) - bareG(RuleId.FRONT_TYRE_LIMIT) - gearShareG(0.01);
    emptyG(frontG + spareG, rearG);
  }

  private void rearTyres() {
    builder.ute(ute -> ute.rearTyres(120, TYRES));
    long spareG = capacityG(120) - bareG(RuleId.REAR_TYRE_LIMIT) - gearShareG(0.25);
    emptyG(frontG, Math.max(0L, rearG + spareG));
  }

  private void emptyG(long front, long rear) {
    frontG = front;
    rearG = rear;
    builder.ute(ute -> ute.emptyG(front, rear));
  }

  private static long capacityG(int loadIndex) {
    return TyreLoadIndex.capacityG(loadIndex).orElseThrow() * TYRES;
  }

  /** The worst load of a limit without gear, in grams; 0 where it does not apply. */
  private long bareG(RuleId rule) {
    Scenario scenario = builder.scenario();
    Loading bare =
        Loading.of(
            scenario,
            new LoadPlan(
                scenario.id(), RigMaker.firstBays(scenario), List.of(), LoadPlan.Origin.HAND));
    List<Double> loads = new ArrayList<>(List.of(0.0));
    for (LimitReading reading : CheckReport.of(Situation.of(bare)).tightest()) {
      if (reading.rule() == rule) {
        loads.add(reading.margin().loadKg());
      }
    }
    return Math.round(loads.get(loads.size() - 1) * 1000.0);
  }
}
