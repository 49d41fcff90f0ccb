/* The member "parameters": the design as planned. */
#include "project_member.h"

#include <glib/gi18n-lib.h>
#include <string.h>

/* ---- reading ---- */

/* A list as people write it, "20; 24; 24"; NULL where node is no list of numbers or texts. */
static char *
join_items (JsonNode *node, gboolean numbers)
{
  JsonArray *list = JSON_NODE_HOLDS_ARRAY (node) ? json_node_get_array (node) : NULL;
  GString *text;

  if (list == NULL)
    return NULL;
  text = g_string_new (NULL);
  for (guint i = 0; i < json_array_get_length (list); i++)
    {
      JsonNode *item = json_array_get_element (list, i);

      if (numbers ? !rw_member_is_number (item)
                  : !rw_member_is_text (item) || strchr (json_node_get_string (item), ';') != NULL)
        {
          g_string_free (text, TRUE);
          return NULL;
        }
      g_string_append (text, i > 0 ? "; " : "");
      if (numbers)
        rw_json_number (text, json_node_get_double (item));
      else
        g_string_append (text, json_node_get_string (item));
    }
  return g_string_free (text, FALSE);
}

static gboolean
read_number (RwDesign *design, RwParamId id, JsonNode *node, GError **error)
{
  g_autoptr (GError) reason = NULL;

  if (!rw_member_is_number (node))
    return rw_member_fail (error, RW_FILE_ERROR_VALUE, N_("The value of %s is no number"), rw_param (id)->id);
  return rw_design_set (design, id, json_node_get_double (node), &reason)
         || rw_member_fail_value (error, rw_param (id)->id, reason);
}

static gboolean
read_other (RwDesign *design, RwParamId id, JsonNode *node, GError **error)
{
  const RwParam *param = rw_param (id);
  g_autoptr (GError) reason = NULL;
  g_autofree char *text = NULL;

  switch (param->kind)
    {
    case RW_KIND_LENGTH_LIST:
    case RW_KIND_CENTS_LIST:
      text = join_items (node, TRUE);
      if (text == NULL)
        return rw_member_fail (error, RW_FILE_ERROR_VALUE, N_("The value of %s is no list of numbers"), param->id);
      break;
    case RW_KIND_WOOD_LIST:
    case RW_KIND_STRING_SET:
      text = join_items (node, FALSE);
      if (text == NULL)
        return rw_member_fail (error, RW_FILE_ERROR_VALUE, N_("The value of %s is no list of texts"), param->id);
      break;
    default:
      text = rw_member_is_text (node) ? g_strdup (json_node_get_string (node)) : NULL;
      if (text == NULL)
        return rw_member_fail (error, RW_FILE_ERROR_VALUE, N_("The value of %s is no text"), param->id);
    }
  return rw_design_read (design, id, text, RW_STYLE_FILE, &reason) || rw_member_fail_value (error, param->id, reason);
}

gboolean
rw_member_read_parameter (RwDesign *design, RwParamId id, JsonNode *node, GError **error)
{
  return rw_param_is_number (rw_param (id)) ? read_number (design, id, node, error)
                                            : read_other (design, id, node, error);
}

gboolean
rw_member_read_parameters (RwProject *project, JsonNode *node, GError **error)
{
  JsonObjectIter iter;
  const char *name;
  JsonNode *value;

  if (!JSON_NODE_HOLDS_OBJECT (node))
    return rw_member_fail (error, RW_FILE_ERROR_DAMAGED, N_("The member %s is no object"), "parameters");
  json_object_iter_init_ordered (&iter, json_node_get_object (node));
  while (json_object_iter_next_ordered (&iter, &name, &value))
    {
      int id = rw_param_find (name);

      if (id < 0)
        rw_member_keep (project, rw_unknown_path ("parameters", name, NULL), value);
      else if (!rw_member_read_parameter (&project->design, (RwParamId) id, value, error))
        return FALSE;
    }
  return TRUE;
}

/* ---- writing ---- */

/* A list as people write it, "20; 24; 24", becomes a list of numbers or texts. */
static void
append_items (GString *out, const char *text, gboolean numbers)
{
  g_auto (GStrv) items = g_strsplit (text, ";", -1);

  g_string_append (out, "[ ");
  for (int i = 0; items[i] != NULL; i++)
    {
      g_string_append (out, i > 0 ? ", " : "");
      if (numbers)
        g_string_append (out, g_strstrip (items[i]));
      else
        rw_json_string (out, g_strstrip (items[i]));
    }
  g_string_append (out, " ]");
}

void
rw_member_append_parameter (GString *out, const RwDesign *design, RwParamId id)
{
  g_autofree char *text = NULL;

  if (rw_param_is_number (rw_param (id)))
    {
      rw_json_number (out, rw_design_get (design, id));
      return;
    }
  text = rw_design_write (design, id, RW_STYLE_FILE);
  switch (rw_param (id)->kind)
    {
    case RW_KIND_LENGTH_LIST:
    case RW_KIND_CENTS_LIST:
      append_items (out, text, TRUE);
      break;
    case RW_KIND_WOOD_LIST:
    case RW_KIND_STRING_SET:
      append_items (out, text, FALSE);
      break;
    default:
      rw_json_string (out, text);
    }
}

void
rw_member_write_parameters (RwJsonWriter *writer, const RwProject *project)
{
  rw_json_name (writer, "parameters");
  rw_json_begin (writer, '{');
  for (int id = 0; id < RW_PARAM_COUNT; id++)
    {
      rw_json_name (writer, rw_param ((RwParamId) id)->id);
      rw_member_append_parameter (writer->out, &project->design, (RwParamId) id);
    }
  rw_member_write_unknown (writer, project, "/parameters");
  rw_json_end (writer, '}');
}
