/* The member "issued": papers that left for the bench.
 *
 * "issued": [ { "date": "2026-05-04", "units": "mm", "papers": [ "rim-strip" ], "values": { ... } } ]
 *
 * It is not written where none has left.  What is not known of an issue is kept by its place in the list. */
#include <glib/gi18n-lib.h>

#include "project_snapshot.h"

/* ---- reading ---- */

static char **
read_papers (JsonObject *object, GError **error)
{
  JsonNode *node = json_object_get_member (object, "papers");
  JsonArray *list = node != NULL && JSON_NODE_HOLDS_ARRAY (node) ? json_node_get_array (node) : NULL;
  g_autoptr (GStrvBuilder) papers = g_strv_builder_new ();
  guint length = list != NULL ? json_array_get_length (list) : 0, taken = 0;

  for (; taken < length && rw_member_is_text (json_array_get_element (list, taken)); taken++)
    g_strv_builder_add (papers, json_array_get_string_element (list, taken));
  if (length > 0 && taken == length)
    return g_strv_builder_end (papers);
  rw_member_fail (error, RW_FILE_ERROR_DAMAGED, N_("The member %s is no list of texts"), "papers");
  return NULL;
}

static int
read_units (JsonObject *object, GError **error)
{
  g_autofree char *name = g_strdup (rw_units_name (RW_UNITS_MM));
  int units;

  if (!rw_member_read_text (object, "units", &name, error))
    return -1;
  units = rw_units_find (name);
  if (units < 0)
    rw_member_fail (error, RW_FILE_ERROR_VALUE, N_("There are no units %s"), name);
  return units;
}

static char *
path_of (guint place, const char *below)
{
  g_autofree char *number = g_strdup_printf ("%u", place);

  return rw_unknown_path ("issued", number, below, NULL);
}

static gboolean
read_issue (RwProject *project, JsonNode *node, GError **error)
{
  static const char *const known[] = { "date", "units", "papers", "values", NULL };
  JsonObject *object = JSON_NODE_HOLDS_OBJECT (node) ? json_node_get_object (node) : NULL;
  g_autofree char *path = path_of (project->issued->issues->len, NULL);
  g_autofree char *below = path_of (project->issued->issues->len, "values");
  g_autofree char *date = NULL;
  g_auto (GStrv) papers = NULL;
  RwSnapshot *values;
  int units;

  if (object == NULL)
    return rw_member_fail (error, RW_FILE_ERROR_DAMAGED, N_("An entry of %s is no object"), "issued");
  date = rw_member_read_date (object, "issued", error);
  units = date != NULL ? read_units (object, error) : -1;
  papers = units >= 0 ? read_papers (object, error) : NULL;
  if (papers == NULL)
    return FALSE;
  values = rw_snapshot_read (project, json_object_get_member (object, "values"), below, error);
  if (values == NULL)
    return FALSE;
  rw_issued_append (project->issued, date, (RwUnits) units, (const char *const *) papers, values);
  rw_member_keep_others (project, object, path, known);
  return TRUE;
}

gboolean
rw_member_read_issued (RwProject *project, JsonNode *node, GError **error)
{
  JsonArray *list;

  if (!JSON_NODE_HOLDS_ARRAY (node))
    return rw_member_fail (error, RW_FILE_ERROR_DAMAGED, N_("The member %s is no list"), "issued");
  list = json_node_get_array (node);
  for (guint i = 0; i < json_array_get_length (list); i++)
    if (!read_issue (project, json_array_get_element (list, i), error))
      return FALSE;
  return TRUE;
}

/* ---- writing ---- */

static void
append_papers (GString *out, char **papers)
{
  g_string_append (out, "[ ");
  for (int i = 0; papers[i] != NULL; i++)
    {
      g_string_append (out, i > 0 ? ", " : "");
      rw_json_string (out, papers[i]);
    }
  g_string_append (out, " ]");
}

static void
write_issue (RwJsonWriter *writer, const RwProject *project, guint place)
{
  const RwIssue *issue = g_ptr_array_index (project->issued->issues, place);
  g_autofree char *path = path_of (place, NULL), *below = path_of (place, "values");

  rw_json_next (writer);
  rw_json_begin (writer, '{');
  rw_json_name (writer, "date");
  rw_json_string (writer->out, issue->date);
  rw_json_name (writer, "units");
  rw_json_string (writer->out, rw_units_name (issue->units));
  rw_json_name (writer, "papers");
  append_papers (writer->out, issue->papers);
  rw_json_name (writer, "values");
  rw_snapshot_write (writer, project, issue->values, below);
  rw_member_write_unknown (writer, project, path);
  rw_json_end (writer, '}');
}

void
rw_member_write_issued (RwJsonWriter *writer, const RwProject *project)
{
  guint count = project->issued->issues->len;

  if (count == 0)
    return;
  rw_json_name (writer, "issued");
  rw_json_begin (writer, '[');
  for (guint i = 0; i < count; i++)
    write_issue (writer, project, i);
  rw_json_end (writer, ']');
}
