package kitstow.planner.audit;

import java.util.List;
import kitstow.planner.model.LoadState;
import kitstow.planner.model.Loading;

/**
 * Names every binding rule that a loading breaks. Preferences are not its business. Judges states
 * as they are given: whether the trip passes through them is for others to prove.
 */
public final class Audit {
  private Audit() {}

  /**
   * Every broken rule, one finding for a rule and its subjects, ordered by rule and then by
   * subjects. A loading that breaks nothing gives an empty list.
   *
   * @param states moments of the trip; those that are a note only are passed over
   * @throws IllegalArgumentException if a state was made for another loading, or an item does not
   *     stand where its placement says
   */
  public static List<AuditFinding> of(Loading loading, List<LoadState> states) {
    AuditCase audited = AuditCase.of(loading, states);
    Findings findings = new Findings();
    MassAudit.judge(audited, findings);
    AxleAudit.judge(audited, findings);
    RoofAudit.judge(audited, findings);
    BarAudit.judge(audited, findings);
    RatingAudit.judge(audited, findings);
    ModuleAudit.judge(audited, findings);
    CanopyAudit.judge(audited, findings);
    DoorAudit.judge(audited, findings);
    PlaceAudit.judge(audited, findings);
    OverlapAudit.judge(audited, findings);
    SupportAudit.judge(audited, findings);
    BearingAudit.judge(audited, findings);
    ColumnAudit.judge(audited, findings);
    AirAudit.judge(audited, findings);
    LidAudit.judge(audited, findings);
    CompanyAudit.judge(audited, findings);
    ReachAudit.judge(audited, findings);
    StopAudit.judge(audited, findings);
    NeedAudit.judge(audited, findings);
    return findings.inOrder();
  }
}
