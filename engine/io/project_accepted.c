/* The member "accepted": findings that the maker accepts.
 *
 * "accepted": [ { "rule": "hooks.stress", "about": "hooks.count", "severity": "caution", "date": "2026-05-04",
 *                 "reason": "as on the old one" } ]
 *
 * It is not written where nothing is accepted.  A rule that is not known here does no harm and is kept. */
#include <glib/gi18n-lib.h>
#include <string.h>

#include "check/finding.h"
#include "project_member.h"

/* -1: there is no such severity. */
static int
severity_of (const char *name)
{
  for (int severity = RW_STOP; severity <= RW_NOTE; severity++)
    if (strcmp (name, rw_severity_name ((RwSeverity) severity)) == 0)
      return severity;
  return -1;
}

/* What the unknown members of an entry are kept under. */
static char *
path_of (const char *rule, const char *about)
{
  g_autofree char *key = g_strdup_printf ("%s %s", rule, about);

  return rw_unknown_path ("accepted", key, NULL);
}

static const char *
text_in (JsonObject *object, const char *name)
{
  JsonNode *node = object != NULL ? json_object_get_member (object, name) : NULL;

  return rw_member_is_text (node) ? json_node_get_string (node) : NULL;
}

static gboolean
read_item (RwProject *project, JsonNode *node, GError **error)
{
  static const char *const known[] = { "rule", "about", "severity", "date", "reason", NULL };
  JsonObject *object = JSON_NODE_HOLDS_OBJECT (node) ? json_node_get_object (node) : NULL;
  const char *rule = text_in (object, "rule"), *about = text_in (object, "about");
  const char *name = text_in (object, "severity");
  g_autofree char *reason = g_strdup (""), *date = NULL, *path = NULL;

  if (rule == NULL || about == NULL || name == NULL)
    return rw_member_fail (error, RW_FILE_ERROR_DAMAGED, N_("An entry of %s says not what it is about"), "accepted");
  if (severity_of (name) < 0)
    return rw_member_fail (error, RW_FILE_ERROR_VALUE, N_("There is no severity %s"), name);
  if (rw_accepted_find (project->accepted, rule, about) != NULL)
    return rw_member_fail (error, RW_FILE_ERROR_DAMAGED, N_("The finding %s is accepted twice"), rule);
  if (!rw_member_read_text (object, "reason", &reason, error))
    return FALSE;
  date = rw_member_read_date (object, rule, error);
  if (date == NULL)
    return FALSE;
  rw_accepted_add (project->accepted, rule, about, severity_of (name), date, reason);
  path = path_of (rule, about);
  rw_member_keep_others (project, object, path, known);
  return TRUE;
}

gboolean
rw_member_read_accepted (RwProject *project, JsonNode *node, GError **error)
{
  JsonArray *list;

  if (!JSON_NODE_HOLDS_ARRAY (node))
    return rw_member_fail (error, RW_FILE_ERROR_DAMAGED, N_("The member %s is no list"), "accepted");
  list = json_node_get_array (node);
  for (guint i = 0; i < json_array_get_length (list); i++)
    if (!read_item (project, json_array_get_element (list, i), error))
      return FALSE;
  return TRUE;
}

static void
write_text (RwJsonWriter *writer, const char *name, const char *text)
{
  rw_json_name (writer, name);
  rw_json_string (writer->out, text);
}

static void
write_item (RwJsonWriter *writer, const RwProject *project, const RwAcceptance *item)
{
  g_autofree char *path = path_of (item->rule, item->about);

  rw_json_next (writer);
  rw_json_begin (writer, '{');
  write_text (writer, "rule", item->rule);
  write_text (writer, "about", item->about);
  write_text (writer, "severity", rw_severity_name ((RwSeverity) item->severity));
  write_text (writer, "date", item->date);
  write_text (writer, "reason", item->reason);
  rw_member_write_unknown (writer, project, path);
  rw_json_end (writer, '}');
}

void
rw_member_write_accepted (RwJsonWriter *writer, const RwProject *project)
{
  if (project->accepted->items->len == 0)
    return;
  rw_json_name (writer, "accepted");
  rw_json_begin (writer, '[');
  for (guint i = 0; i < project->accepted->items->len; i++)
    write_item (writer, project, g_ptr_array_index (project->accepted->items, i));
  rw_json_end (writer, ']');
}
