#include "project_snapshot.h"

#include <glib/gi18n-lib.h>

static gboolean
read_param (RwSnapshot *snapshot, RwParamId id, JsonNode *node, GError **error)
{
  g_autofree RwDesign *read = g_new (RwDesign, 1);
  g_autoptr (GError) reason = NULL;

  rw_design_init (read);
  if (!rw_member_read_parameter (read, id, node, error))
    return FALSE;
  return rw_snapshot_put_param (snapshot, id, read, &reason)
         || rw_member_fail_value (error, rw_param (id)->id, reason);
}

static gboolean
read_slot (RwSnapshot *snapshot, RwSlot slot, const char *id, JsonNode *node, GError **error)
{
  g_autoptr (GError) reason = NULL;

  if (!rw_member_is_number (node))
    return rw_member_fail (error, RW_FILE_ERROR_VALUE, N_("The value of %s is no number"), id);
  return rw_snapshot_put_slot (snapshot, slot, json_node_get_double (node), &reason)
         || rw_member_fail_value (error, id, reason);
}

RwSnapshot *
rw_snapshot_read (RwProject *project, JsonNode *node, const char *path, GError **error)
{
  g_autoptr (RwSnapshot) snapshot = rw_snapshot_new ();
  JsonObjectIter iter;
  const char *id;
  JsonNode *value;

  if (node == NULL || !JSON_NODE_HOLDS_OBJECT (node))
    {
      rw_member_fail (error, RW_FILE_ERROR_DAMAGED, N_("The member %s is no object"), "values");
      return NULL;
    }
  json_object_iter_init_ordered (&iter, json_node_get_object (node));
  while (json_object_iter_next_ordered (&iter, &id, &value))
    {
      int param = rw_param_find (id), slot = rw_slot_find (id);
      g_autofree char *last = rw_unknown_path (id, NULL);

      if (param < 0 && slot < 0)
        rw_member_keep (project, g_strconcat (path, last, NULL), value);
      if ((param >= 0 && !read_param (snapshot, (RwParamId) param, value, error))
          || (slot >= 0 && !read_slot (snapshot, (RwSlot) slot, id, value, error)))
        return NULL;
    }
  return g_steal_pointer (&snapshot);
}

/* An id that is both a parameter and a dimension is one value, and is written with the parameters. */
static gboolean
is_written (const RwSnapshot *snapshot, const char *id)
{
  int param = rw_param_find (id);

  return param >= 0 && snapshot->has_param[param];
}

void
rw_snapshot_write (RwJsonWriter *writer, const RwProject *project, const RwSnapshot *snapshot, const char *path)
{
  rw_json_begin (writer, '{');
  for (RwParamId id = 0; id < RW_PARAM_COUNT; id++)
    if (snapshot->has_param[id])
      {
        rw_json_name (writer, rw_param (id)->id);
        rw_member_append_parameter (writer->out, &snapshot->design, id);
      }
  for (guint i = 0; i < snapshot->rows->len; i++)
    {
      const RwSnapshotRow *row = &g_array_index (snapshot->rows, RwSnapshotRow, i);
      g_autofree char *id = rw_slot_id (row->slot);

      if (is_written (snapshot, id))
        continue;
      rw_json_name (writer, id);
      rw_json_number (writer->out, row->value);
    }
  rw_member_write_unknown (writer, project, path);
  rw_json_end (writer, '}');
}
