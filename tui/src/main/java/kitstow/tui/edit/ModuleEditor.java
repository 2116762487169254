package kitstow.tui.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import kitstow.planner.model.Bay;
import kitstow.planner.model.FitOutModule;
import kitstow.planner.model.ModuleChoice;
import kitstow.planner.model.Scenario;

/** A module: the bay it stands in, where a search may put it, how much it is wanted. */
public final class ModuleEditor implements Editor {
  /** Place of the field of its bay. */
  public static final int BAY_FIELD = 1;

  private static final String OUT = "left out";
  private static final String STAYS = "leaves it there";
  private static final String MOVES = "may move it";
  private static final String AS_IT_WAS = "may move it as before";

  private final ModuleChoice choice;
  private final Bays bays;
  private final List<Bay> taking;
  private final Field name = Field.text("Name");
  private final Field stands;
  private final Field search;
  private final Field need = Field.words("Need", Words.all(Words.NEEDS));

  /** An editor of a module of a design. */
  public ModuleEditor(Design design, ModuleChoice choice) {
    this.choice = choice;
    this.bays = new Bays(design);
    this.taking = new ArrayList<>(bays.taking(choice.module()));
    bays.of(choice.module()).filter(bay -> !taking.contains(bay)).ifPresent(taking::add);
    List<String> words = new ArrayList<>(List.of(OUT));
    taking.forEach(bay -> words.add(bays.name(bay.id())));
    this.stands = Field.words("Stands in", words);
    this.search =
        Field.words(
            "A search",
            choice.bayIds().size() > 1 ? List.of(STAYS, AS_IT_WAS, MOVES) : List.of(STAYS, MOVES));
  }

  @Override
  public String title() {
    return choice.module().title();
  }

  @Override
  public String deed() {
    return "change " + choice.module().title();
  }

  @Override
  public List<Field> fields() {
    return List.of(name, stands, search, need);
  }

  @Override
  public List<String> texts() {
    return List.of(
        choice.module().title(),
        bays.of(choice.module()).map(bay -> bays.name(bay.id())).orElse(OUT),
        choice.bayIds().size() > 1 ? AS_IT_WAS : STAYS,
        Words.of(choice.need()));
  }

  /** Another module that stands in the bay that is chosen, or reaches into it. */
  @Override
  public Optional<String> note(Form form, Field field) {
    Optional<Bay> bay = field == stands ? chosen(form) : Optional.empty();
    Optional<String> there =
        bay.flatMap(one -> bays.in(one.id()))
            .filter(other -> !other.module().id().equals(choice.module().id()))
            .map(other -> "in the place of " + other.module().title());
    return there.or(() -> bay.flatMap(this::fouled));
  }

  private Optional<String> fouled(Bay bay) {
    List<String> others =
        bays.reachingInto(bay).stream()
            .filter(other -> !other.module().id().equals(choice.module().id()))
            .map(other -> other.module().title())
            .toList();
    return others.isEmpty() ? Optional.empty() : Optional.of("fouls " + String.join(", ", others));
  }

  private Optional<Bay> chosen(Form form) {
    int at = form.word(stands);
    return at == 0 ? Optional.empty() : Optional.of(taking.get(at - 1));
  }

  @Override
  public Design after(Design before, Form form) {
    Scenario scenario = before.scenario();
    Optional<Bay> bay = chosen(form);
    FitOutModule module = choice.module().renamed(choice.module().id(), form.text(name).strip());
    ModuleChoice changed =
        new ModuleChoice(
            module,
            bayIds(bay, form.text(search)),
            Words.NEEDS.get(form.word(need)),
            choice.value());
    List<ModuleChoice> modules = Lists.with(scenario.modules(), Optional.of(choice), changed);
    Map<String, String> planned = new LinkedHashMap<>(before.plan().moduleBays());
    Optional<String> old = Optional.ofNullable(planned.remove(module.id()));
    bay.ifPresent(to -> exchange(to, old, modules, planned));
    return Tidy.plan(before, scenario.withModules(modules), planned);
  }

  private List<String> bayIds(Optional<Bay> bay, String wish) {
    Set<String> ids = new LinkedHashSet<>();
    bay.ifPresent(one -> ids.add(one.id()));
    if (wish.equals(MOVES)) {
      // Where it stands tells where it belongs: a slide of a canopy is not tried on a roof.
      taking.stream()
          .filter(one -> bay.isEmpty() || one.zone() == bay.get().zone())
          .forEach(one -> ids.add(one.id()));
    } else if (wish.equals(AS_IT_WAS) || ids.isEmpty()) {
      ids.addAll(choice.bayIds());
    }
    return List.copyOf(ids);
  }

  /** What stands in the bay goes where this one was if that takes it, else it is left out. */
  private void exchange(
      Bay to, Optional<String> old, List<ModuleChoice> modules, Map<String, String> planned) {
    Optional<FitOutModule> other =
        bays.in(to.id())
            .map(fitted -> fitted.module())
            .filter(one -> !one.id().equals(choice.module().id()));
    other.ifPresent(
        one -> {
          planned.remove(one.id());
          Optional<Bay> back =
              old.flatMap(
                  id -> bays.taking(one).stream().filter(bay -> bay.id().equals(id)).findFirst());
          back.ifPresent(
              bay -> {
                planned.put(one.id(), bay.id());
                modules.replaceAll(
                    each -> each.module().id().equals(one.id()) ? also(each, bay.id()) : each);
              });
        });
    planned.put(choice.module().id(), to.id());
  }

  private static ModuleChoice also(ModuleChoice each, String bayId) {
    Set<String> ids = new LinkedHashSet<>(each.bayIds());
    ids.add(bayId);
    return each.withBays(List.copyOf(ids));
  }
}
