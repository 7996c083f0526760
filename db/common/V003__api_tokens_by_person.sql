create index api_tokens_by_person on api_tokens (person);
