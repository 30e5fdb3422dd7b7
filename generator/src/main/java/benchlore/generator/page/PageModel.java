package benchlore.generator.page;

/** What one template is given: a record whose components are the template's variables. */
public sealed interface PageModel
    permits CompareModel,
        EdgeProfilesModel,
        FaultsModel,
        FinishOverFinishModel,
        FrontModel,
        JointsModel,
        KeyModel,
        KindModel,
        PlanModel,
        PlannerModel,
        PlannersModel,
        PlansModel,
        RecordModel,
        SheensModel,
        SourcesModel,
        TableModel,
        TableWholeModel,
        TablesModel {
  /** Name of the template, without its ending. */
  String template();
}
