/* The member "made": the steps that are done.
 *
 * "made": [ { "step": "turn", "date": "2026-05-04", "values": { "rim.outer_diameter": 279.2, ... } } ]
 *
 * It is not written where nothing is made. */
#include <glib/gi18n-lib.h>

#include "project_snapshot.h"

static gboolean
read_step (RwProject *project, RwStep step, JsonObject *object, GError **error)
{
  static const char *const known[] = { "step", "date", "values", NULL };
  const char *name = rw_step_name (step);
  g_autofree char *path = rw_unknown_path ("made", name, NULL);
  g_autofree char *below = rw_unknown_path ("made", name, "values", NULL);
  g_autofree char *date = rw_member_read_date (object, name, error);
  RwSnapshot *held;
  RwMadeStep *made;

  if (date == NULL)
    return FALSE;
  held = rw_snapshot_read (project, json_object_get_member (object, "values"), below, error);
  if (held == NULL)
    return FALSE;
  made = rw_made_add (project->made, step, date);
  rw_snapshot_free (made->held);
  made->held = held;
  rw_member_keep_others (project, object, path, known);
  return TRUE;
}

static gboolean
read_item (RwProject *project, JsonNode *node, GHashTable *seen, GError **error)
{
  JsonObject *object = JSON_NODE_HOLDS_OBJECT (node) ? json_node_get_object (node) : NULL;
  JsonNode *name_node = object != NULL ? json_object_get_member (object, "step") : NULL;
  const char *name;
  int step;

  if (!rw_member_is_text (name_node))
    return rw_member_fail (error, RW_FILE_ERROR_DAMAGED, N_("An entry of %s has no step"), "made");
  name = json_node_get_string (name_node);
  step = rw_step_find (name);
  if (!g_hash_table_add (seen, g_strdup (name)))
    return rw_member_fail (error, RW_FILE_ERROR_DAMAGED, N_("The step %s is made twice"), name);
  if (step >= 0)
    return read_step (project, (RwStep) step, object, error);
  rw_member_keep (project, rw_unknown_path ("made", name, NULL), node);
  return TRUE;
}

gboolean
rw_member_read_made (RwProject *project, JsonNode *node, GError **error)
{
  g_autoptr (GHashTable) seen = g_hash_table_new_full (g_str_hash, g_str_equal, g_free, NULL);
  JsonArray *list;

  if (!JSON_NODE_HOLDS_ARRAY (node))
    return rw_member_fail (error, RW_FILE_ERROR_DAMAGED, N_("The member %s is no list"), "made");
  list = json_node_get_array (node);
  for (guint i = 0; i < json_array_get_length (list); i++)
    if (!read_item (project, json_array_get_element (list, i), seen, error))
      return FALSE;
  return TRUE;
}

static void
write_step (RwJsonWriter *writer, const RwProject *project, const RwMadeStep *made)
{
  const char *name = rw_step_name (made->step);
  g_autofree char *path = rw_unknown_path ("made", name, NULL);
  g_autofree char *below = rw_unknown_path ("made", name, "values", NULL);

  rw_json_next (writer);
  rw_json_begin (writer, '{');
  rw_json_name (writer, "step");
  rw_json_string (writer->out, name);
  rw_json_name (writer, "date");
  rw_json_string (writer->out, made->date);
  rw_json_name (writer, "values");
  rw_snapshot_write (writer, project, made->held, below);
  rw_member_write_unknown (writer, project, path);
  rw_json_end (writer, '}');
}

void
rw_member_write_made (RwJsonWriter *writer, const RwProject *project)
{
  if (project->made->steps->len == 0 && !rw_member_has_unknown (project, "/made"))
    return;
  rw_json_name (writer, "made");
  rw_json_begin (writer, '[');
  for (guint i = 0; i < project->made->steps->len; i++)
    write_step (writer, project, g_ptr_array_index (project->made->steps, i));
  rw_member_write_strangers (writer, project, "/made");
  rw_json_end (writer, ']');
}
