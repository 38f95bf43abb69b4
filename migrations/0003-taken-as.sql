-- What a person says a need is, where its list leaves open what makes another article.
alter table need add column taken_as text;
