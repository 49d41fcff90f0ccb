#include "list_file.h"

#include "list_formats.h"

char *
rw_list_write (const RwProject *project, const RwAnswer *answer, RwListFormat format, RwUnits units)
{
  switch (format)
    {
    case RW_LIST_CSV:
      return rw_list_csv (project, answer, units);
    case RW_LIST_JSON:
      return rw_list_json (project, answer);
    case RW_LIST_TEXT:
    default:
      return rw_list_text (project, answer, units);
    }
}

char *
rw_findings_write (const RwProject *project,
                   const RwAnswer  *answer,
                   gboolean         remedies,
                   RwListFormat     format,
                   RwUnits          units)
{
  const RwDesign *design = remedies ? &project->design : NULL;

  return format == RW_LIST_JSON ? rw_findings_json (answer, design) : rw_findings_text (answer, design, units);
}

char *
rw_parameters_write (RwListFormat format)
{
  switch (format)
    {
    case RW_LIST_CSV:
      return rw_parameters_csv ();
    case RW_LIST_JSON:
      return rw_parameters_json ();
    case RW_LIST_TEXT:
    default:
      return rw_parameters_text ();
    }
}
